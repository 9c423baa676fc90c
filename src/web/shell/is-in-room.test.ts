import { describe, expect, it } from 'vitest';
import { isInRoom } from './is-in-room.ts';

const shelf = { name: 'Shelf', to: '/shelf', alsoAt: ['/materials'] };

describe('isInRoom', () => {
  it('takes the page of the room, pages under it and those at its further addresses', () => {
    expect(['/shelf', '/shelf/lots/1', '/materials/new'].map((path) => isInRoom(path, shelf))).toEqual([
      true,
      true,
      true,
    ]);
  });

  it('is not misled by an address that only begins alike', () => {
    expect(isInRoom('/shelf-life', shelf)).toBe(false);
  });

  it('takes the first page only as itself, since every address begins with a stroke', () => {
    const morning = { name: 'This morning', to: '/', alsoAt: [] };
    expect(isInRoom('/', morning)).toBe(true);
    expect(isInRoom('/shelf', morning)).toBe(false);
  });
});
