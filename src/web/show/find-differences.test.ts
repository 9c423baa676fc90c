import { describe, expect, it } from 'vitest';
import { findDifferences } from './find-differences.ts';

describe('findDifferences', () => {
  it('names only what differs, both sides beside each other', () => {
    const mine = [
      ['Name', 'Hazel'],
      ['Price', '8.50'],
    ] as const;
    const theirs = [
      ['Name', 'Hazel'],
      ['Price', '9.00'],
    ] as const;
    expect(findDifferences(mine, theirs)).toEqual([{ label: 'Price', mine: '8.50', theirs: '9.00' }]);
  });

  it('shows what only one side has', () => {
    expect(findDifferences([], [['Product 2', '3 × Balm']])).toEqual([
      { label: 'Product 2', mine: '', theirs: '3 × Balm' },
    ]);
  });

  it('finds nothing between equals', () => {
    expect(findDifferences([['Name', 'x']], [['Name', 'x']])).toEqual([]);
  });
});
