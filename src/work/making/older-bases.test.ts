import { describe, expect, it } from 'vitest';
import type { NamedRevisionLine } from '../../storage/index.ts';
import { isSameComposition } from './older-bases.ts';

const lines = (...grams: readonly [item: string, grams: string][]): NamedRevisionLine[] =>
  grams.map(([item_id, amount], position) => ({
    revision_id: 'r',
    position,
    stage: 'Melt',
    item_kind: 'material',
    item_id,
    item_name: item_id,
    grams: amount,
  }));

describe('the same composition', () => {
  it('is told whatever size it was written for, and in whatever order', () => {
    expect(
      isSameComposition(lines(['shea', '1'], ['oil', '2']), lines(['oil', '66.6'], ['shea', '33.3'])),
    ).toBe(true);
  });

  it('is told where an item stands on two lines', () => {
    expect(
      isSameComposition(
        lines(['shea', '60'], ['oil', '40']),
        lines(['shea', '30'], ['oil', '40'], ['shea', '30']),
      ),
    ).toBe(true);
  });

  it('is another with a microgram moved, or an item exchanged', () => {
    const first = lines(['shea', '60'], ['oil', '40']);
    expect(isSameComposition(first, lines(['shea', '60.000001'], ['oil', '39.999999']))).toBe(false);
    expect(isSameComposition(first, lines(['shea', '60'], ['cocoa', '40']))).toBe(false);
    expect(isSameComposition(first, [])).toBe(false);
  });
});
