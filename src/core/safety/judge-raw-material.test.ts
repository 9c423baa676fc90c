import { describe, expect, it } from 'vitest';
import { judgePeroxide } from './judge-raw-material.ts';

const BELOW_10 = { limitValue: 10, isStrict: true };
const AT_MOST_20 = { limitValue: 20, isStrict: false };
const oil = (peroxideMmolPerLitre?: string, lot = 'L1') => ({
  name: 'Pine oil',
  lot,
  ...(peroxideMmolPerLitre !== undefined && { peroxideMmolPerLitre }),
});
const wordOf = (rule: typeof BELOW_10, ...lots: ReturnType<typeof oil>[]) =>
  judgePeroxide(rule, ['Pine oil'], lots).verdict;

describe('a limit of the peroxide value', () => {
  it('is kept by a lot whose paper measures less', () => {
    expect(wordOf(BELOW_10, oil('3.2'))).toBe('within');
  });

  it('is broken at the limit itself where the value has to lie below it, and by the least bit more elsewhere', () => {
    expect(wordOf(BELOW_10, oil('9.999999'))).toBe('within');
    expect(wordOf(BELOW_10, oil('10'))).toBe('over');
    expect(wordOf(AT_MOST_20, oil('20'))).toBe('within');
    expect(wordOf(AT_MOST_20, oil('20.000001'))).toBe('over');
  });

  it('stays open where no paper gives a value, of one lot or of one of two', () => {
    expect(wordOf(BELOW_10, oil())).toBe('unknown');
    expect(wordOf(BELOW_10, oil('2'), oil(undefined, 'L2'))).toBe('unknown');
    expect(judgePeroxide(BELOW_10, ['Pine oil'], [])).toMatchObject({ reason: 'needs-certificate' });
    expect(judgePeroxide(BELOW_10, [], []).verdict).toBe('unknown');
  });

  it('is broken by the one lot that is over, whatever the other has, and names it with its value', () => {
    const answer = judgePeroxide(
      BELOW_10,
      ['Pine oil'],
      [oil('2'), oil('12.50', 'L2'), oil(undefined, 'L3')],
    );
    expect(answer).toMatchObject({ verdict: 'over', foundValue: '12.5', ofLots: ['L2'] });
  });

  it('asks each material that brings the substance in, and none of the others', () => {
    const cedar = { name: 'Cedar oil', peroxideMmolPerLitre: '99' };
    expect(judgePeroxide(BELOW_10, ['Pine oil'], [oil('2'), cedar]).verdict).toBe('within');
    expect(judgePeroxide(BELOW_10, ['Pine oil', 'Fir oil'], [oil('2'), cedar]).verdict).toBe('unknown');
  });
});
