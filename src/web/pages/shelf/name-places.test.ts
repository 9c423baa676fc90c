import { describe, expect, it } from 'vitest';
import { namePlaces } from './name-places.ts';

const places = [
  { id: 'p1', name: 'Shelf 2' },
  { id: 'p2', name: 'Stall box' },
];

describe('the places of a lot', () => {
  it('are named, in the order of the list of places', () => {
    expect(namePlaces(['p1'], places)).toBe('Shelf 2');
    expect(namePlaces(['p2', 'p1'], places)).toBe('Shelf 2, Stall box');
  });

  it('are nothing where nothing stands, or while the list is on its way', () => {
    expect(namePlaces([], places)).toBe('');
    expect(namePlaces(['p1'], [])).toBe('');
  });
});
