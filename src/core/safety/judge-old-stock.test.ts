import { describe, expect, it } from 'vitest';
import { boundSafetyTables } from '../../catalogue/index.ts';
import { judgeOldStock, listNamingChanges } from './judge-old-stock.ts';

/** Regulation (EU) 2023/1545: placed on the market until 31 July 2026, made available until 31 July 2028. */
const [old, change] = listNamingChanges(boundSafetyTables());
if (!old || !change) throw new Error('the tables tell of both lists');

describe('tins labelled under an older wording', () => {
  it('are judged by the two changes that the tables know', () => {
    expect(listNamingChanges(boundSafetyTables())).toHaveLength(2);
    expect(old.requiredForPlacingFrom).toBe('2005-03-11');
    expect(judgeOldStock(change, { placedOn: '2026-01-01', today: '2026-01-01' })).toEqual({
      placedUntil: '2026-07-31',
      soldUntil: '2028-07-31',
      verdict: 'may-be-placed',
    });
  });

  it.each([
    ['2026-07-31', '2026-07-31', 'may-be-placed'],
    ['2026-08-01', '2026-08-01', 'placed-too-late'],
    ['2026-07-31', '2026-08-01', 'may-be-sold-on'],
    ['2026-07-31', '2028-07-31', 'may-be-sold-on'],
    ['2026-07-31', '2028-08-01', 'sold-too-late'],
    ['2026-08-01', '2028-07-31', 'placed-too-late'],
  ])('placed on %s and looked at on %s: %s', (placedOn, today, verdict) => {
    expect(judgeOldStock(change, { placedOn, today }).verdict).toBe(verdict);
  });
});
