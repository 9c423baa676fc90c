import { describe, expect, it } from 'vitest';
import { limits } from '../../src/catalogue/limits.ts';
import { must } from '../../src/core/problem.ts';

/**
 * How much of an oil a product may hold, worked from limits as printed: methyl eugenol, Annex III entry 102 (SCCNFP
 * opinion of 24 October 2000); methyl salicylate, entry 324 (Regulation (EU) 2022/1531); IFRA Standards, 49th
 * Amendment, read in a transcription. The largest percentage of each oil is derived by dividing the limit by the
 * constituent's share; the tolerance printed with each is the one of that derivation.
 */
interface Oil {
  readonly title: string;
  readonly category: string;
  readonly constituents: Readonly<Record<string, number>>;
  readonly mostPercent: number;
  readonly tolerance: number;
  readonly decidedBy: RegExp;
}

const OILS: readonly Oil[] = [
  {
    title: 'clove bud oil in a body butter: the law on methyl eugenol',
    category: '5A',
    constituents: { eugenol: 88, 'methyl eugenol': 0.13 },
    mostPercent: 0.1538,
    tolerance: 0.1538 * 0.001,
    decidedBy: /^methyl eugenol \(law\)/,
  },
  {
    title: 'spearmint oil in a body butter: the Standard on carvone',
    category: '5A',
    constituents: { carvone: 80 },
    mostPercent: 0.25,
    tolerance: 0.0001,
    decidedBy: /^carvone \(ifra\)/,
  },
  {
    title: 'spearmint oil in a face balm, five times lower',
    category: '5B',
    constituents: { carvone: 80 },
    mostPercent: 0.04875,
    tolerance: 0.0001,
    decidedBy: /^carvone \(ifra\)/,
  },
  {
    title: 'bergapten of bergamot oil',
    category: '5A',
    constituents: { bergapten: 0.35 },
    mostPercent: 0.4286,
    tolerance: 0.0005,
    decidedBy: /^bergapten \(ifra\)/,
  },
  {
    title: 'wintergreen oil in a body butter: the law on methyl salicylate',
    category: '5A',
    constituents: { 'methyl salicylate': 99.5 },
    mostPercent: 0.0603,
    tolerance: 0.0001,
    decidedBy: /^methyl salicylate \(law\)/,
  },
];

function judgeOil({ category, constituents }: Oil, oilPercent: number) {
  const contributions = Object.entries(constituents).map(([name, share]) => ({
    name,
    percent: (oilPercent * share) / 100,
    origin: 'natural',
  }));
  const answer = must(
    limits.run({ market: 'EU', use: 'leave-on', category, date: '2026-11-25', contributions }),
  );
  return { isOver: answer.verdicts.some(({ verdict }) => verdict === 'over'), decidedBy: answer.decidedBy };
}

describe.each(OILS)('$title', (oil) => {
  it('is within just below the figure, over just above it, and decided by the rule named', () => {
    expect(judgeOil(oil, oil.mostPercent - oil.tolerance).isOver).toBe(false);
    expect(judgeOil(oil, oil.mostPercent + oil.tolerance).isOver).toBe(true);
    expect(judgeOil(oil, oil.mostPercent).decidedBy).toMatch(oil.decidedBy);
  });
});

describe('phototoxic oils together (IFRA Standards, 49th Amendment)', () => {
  it('passes at exactly the limit: lemon 1.0 % of 2 % with lime 0.35 % of 0.7 %, tolerance 0.001 per cent of it', () => {
    const answer = must(
      limits.run({
        market: 'EU',
        use: 'leave-on',
        category: '5A',
        date: '2026-11-25',
        contributions: [
          { name: 'Citrus Limon Peel Oil', process: 'expressed', percent: 1.0 },
          { name: 'Citrus Aurantifolia Oil', process: 'expressed', percent: 0.35 },
        ],
      }),
    );
    expect(answer.sumOfShares).toBeCloseTo(1, 5);
    expect(answer.verdicts.map(({ verdict }) => verdict)).toEqual(['within', 'within', 'within']);
  });
});
