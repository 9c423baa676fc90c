import { describe, expect, it } from 'vitest';
import { flattenValues } from './flatten-values.ts';

describe('flattenValues', () => {
  it('names each value by its path, in its own order', () => {
    expect(flattenValues({ need: 3, lots: [{ lot: 'A', quantity: 2 }] })).toEqual([
      { name: 'need', value: '3' },
      { name: 'lots[0].lot', value: 'A' },
      { name: 'lots[0].quantity', value: '2' },
    ]);
  });

  it('tells nothing from nought and leaves out what is not there', () => {
    expect(flattenValues({ least: null, most: 0, asked: undefined })).toEqual([
      { name: 'least', value: 'nothing' },
      { name: 'most', value: '0' },
    ]);
  });
});
