import { describe, expect, it } from 'vitest';
import type { Addition } from './batch.ts';
import { lotNumberIn, lotToUse } from './lot-to-use.ts';

const part = (lotId: string, lotNumber: string, restLot?: { id: string; number: string }) => ({
  lotId,
  lotNumber,
  isPart: restLot !== undefined,
  reading: restLot ? { asked: null, vessel: null, restLot } : null,
});
const addition = (...entries: readonly object[]): Addition =>
  ({ lotId: 'planned', lotNumber: 'L-0001', entries }) as Addition;
const ranOut = part('planned', 'L-0001', { id: 'next', number: 'L-0002' });

describe('the lot that a line is weighed from', () => {
  it('is the planned one', () => {
    expect(lotToUse(addition())).toBe('planned');
  });

  it('is the one that was named when the planned one ran out, on every tablet and after a reload', () => {
    expect(lotToUse(addition(ranOut))).toBe('next');
  });

  it('stays that one where the batch is made larger and more of it is asked for', () => {
    expect(lotToUse(addition(ranOut, part('next', 'L-0002')))).toBe('next');
  });

  it('is the one named last where a second one ran out too', () => {
    const again = part('next', 'L-0002', { id: 'third', number: 'L-0003' });
    expect(lotToUse(addition(ranOut, again))).toBe('third');
  });

  it('is the planned one after a part that was weighed in two goes', () => {
    expect(lotToUse(addition({ ...part('planned', 'L-0001'), isPart: true }))).toBe('planned');
  });
});

describe('the number of a lot', () => {
  it('is told by the plan, by what is in, and by what ran out', () => {
    const screen = addition(ranOut, part('fourth', 'L-0004'));
    expect(['planned', 'next', 'fourth'].map((id) => lotNumberIn(screen, id))).toEqual([
      'L-0001',
      'L-0002',
      'L-0004',
    ]);
  });

  it('is not known of another lot, nor of one that this tablet has no number of yet', () => {
    expect(lotNumberIn(addition(), 'other')).toBeUndefined();
    expect(
      lotNumberIn(addition(part('planned', 'L-0001', { id: 'next', number: '' })), 'next'),
    ).toBeUndefined();
  });
});
