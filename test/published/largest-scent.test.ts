import { describe, expect, it } from 'vitest';
import { largestScent } from '../../src/catalogue/largest-scent.ts';
import { must } from '../../src/core/problem.ts';

/**
 * Worked from published limits and published contents: IFRA Standards, 49th Amendment (January 2020), category 5A and 5B;
 * Regulation (EC) No 1223/2009, Annex III, entries 102 (methyl eugenol) and 324 (methyl salicylate, Regulation (EU)
 * 2022/1531). Largest share of an oil = limit / content; the tolerance is that of the printed figure.
 */
const EXAMPLES = [
  {
    title: 'clove bud oil in a body butter: methyl eugenol by law allows a fifth of what eugenol does',
    category: '5A',
    oil: 'Clove bud oil',
    constituents: { eugenol: 88, 'methyl eugenol': 0.13 },
    percent: 0.1538,
    next: 0.7273,
  },
  {
    title: 'spearmint oil in a body butter',
    category: '5A',
    oil: 'Spearmint oil',
    constituents: { carvone: 80 },
    percent: 0.25,
  },
  {
    title: 'spearmint oil in a face balm',
    category: '5B',
    oil: 'Spearmint oil',
    constituents: { carvone: 80 },
    percent: 0.04875,
  },
  {
    title: 'wintergreen oil in a body butter',
    category: '5A',
    oil: 'Wintergreen oil',
    constituents: { 'methyl salicylate': 99.5 },
    percent: 0.0603,
  },
] as const;

describe('the largest share of an oil by published limits', () => {
  it.each(EXAMPLES)('$title', ({ category, oil, constituents, percent, ...rest }) => {
    const answer = must(
      largestScent.run({
        market: 'EU',
        use: 'leave-on',
        category,
        date: '2026-11-25',
        blend: [{ name: oil, share: 1, constituents }],
      }),
    );
    expect(answer.verdict).toBe('found');
    expect(Math.abs((answer.percent ?? Number.NaN) - percent)).toBeLessThanOrEqual(percent * 0.001);
    if ('next' in rest)
      expect(Math.abs((answer.relief?.percent ?? Number.NaN) - rest.next)).toBeLessThanOrEqual(0.0001);
  });

  it('of lemon with lime, expressed: one and 0.35 percent are exactly the sum of shares of one', () => {
    const peel = { plantPart: 'peel', process: 'expressed' };
    const answer = must(
      largestScent.run({
        market: 'EU',
        use: 'leave-on',
        category: '5A',
        date: '2026-11-25',
        blend: [
          { name: 'Lemon oil', share: 1, ...peel },
          { name: 'Lime oil', share: 0.35, ...peel },
        ],
      }),
    );
    expect(answer.percent).toBe(1.35);
    expect(answer.decidedBy).toContain('phototoxic sum');
  });
});
