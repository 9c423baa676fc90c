import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { judgeYield } from './judge-yield.ts';

const verdict = (yieldGrams: string, expectedLossPercent = '3') =>
  must(judgeYield({ inputGrams: '600', yieldGrams, expectedLossPercent })).verdict;

describe('judging a yield', () => {
  it('says what the bowl kept', () => {
    const { lossGrams, lossPercent } = must(
      judgeYield({ inputGrams: '600', yieldGrams: '585', expectedLossPercent: 3 }),
    );
    expect([lossGrams, lossPercent].map(Number)).toEqual([15, 2.5]);
  });

  it('is within at exactly two percent either side of what is expected, and not beyond', () => {
    expect(verdict('570')).toBe('within');
    expect(verdict('569.999999')).toBe('more-lost');
    expect(verdict('594')).toBe('within');
    expect(verdict('594.000001')).toBe('less-lost');
  });

  it('knows that no bowl gives more than it got', () => {
    expect(verdict('600', '1')).toBe('within');
    expect(verdict('600.000001', '1')).toBe('more-than-went-in');
  });

  it('takes another tolerance where one is given', () => {
    const tight = { inputGrams: 100, yieldGrams: 98.9, expectedLossPercent: 1, tolerancePercent: 0 };
    expect(must(judgeYield(tight)).verdict).toBe('more-lost');
  });

  it('refuses no input, less than nothing, and a loss of everything', () => {
    expect(judgeYield({ inputGrams: 0, yieldGrams: -1, expectedLossPercent: 100 })).toMatchObject({
      problems: [
        { code: 'value-not-above', where: 'inputGrams' },
        { code: 'mass-negative', where: 'yieldGrams' },
        { code: 'percent-out-of-range', where: 'expectedLossPercent' },
      ],
    });
  });
});
