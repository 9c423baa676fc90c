import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundSafetyTables } from '../../catalogue/index.ts';
import { must } from '../problem.ts';
import { exact, sumOf } from '../quantity/index.ts';
import { type BlendOil, findLargestScent, judgeLimits, type ScentQuestion } from './index.ts';

const tables = boundSafetyTables();
const BODY = { market: 'EU', use: 'leave-on', category: '5A', date: '2026-11-26' } as const;
const oil = (
  name: string,
  share: BlendOil['share'],
  constituents: Record<string, number> = {},
): BlendOil => ({
  name,
  share,
  constituents: Object.entries(constituents).map(([each, percent]) => ({ name: each, percent })),
});
const clove = (share: BlendOil['share']) =>
  oil('Clove bud oil', share, { eugenol: 88, 'methyl eugenol': 0.13 });
const spearmint = (share: BlendOil['share']) => oil('Spearmint oil', share, { carvone: 80 });
const lavender = (share: BlendOil['share']) => oil('Lavender oil', share, { geraniol: 5, coumarin: 0.3 });

const find = (blend: readonly BlendOil[], more: Partial<ScentQuestion> = {}) =>
  must(findLargestScent(tables, { ...BODY, blend, ...more }));
const percentOf = (blend: readonly BlendOil[], more: Partial<ScentQuestion> = {}) =>
  find(blend, more).percent?.toFixed();

/** The same oils at these percents, judged by the calculation of limits. */
const judge = (blend: readonly BlendOil[], percents: readonly string[]) =>
  judgeLimits(tables, {
    ...BODY,
    contributions: blend.flatMap(({ share: _share, constituents, ...rest }, index) => [
      { ...rest, percent: percents[index] ?? '0' },
      ...constituents.map((one) => ({
        ...one,
        origin: 'natural' as const,
        percent: exact(one.percent)
          .div(100)
          .times(percents[index] ?? '0'),
      })),
    ]),
  }).verdicts.filter(({ verdict }) => verdict === 'over' || verdict === 'prohibited');

describe('the largest scent', () => {
  it('is what the tightest limit leaves, and says what the next would', () => {
    const answer = find([clove(1)]);
    expect(answer.percent?.toFixed(4)).toBe('0.1538');
    expect(answer.decidedBy).toMatchObject({ name: 'methyl eugenol', told: { kind: 'law', entry: '102' } });
    expect(answer.relief?.percent.toFixed(4)).toBe('0.7273');
    expect(answer.relief?.decidedBy).toMatchObject({ name: 'eugenol', told: { kind: 'ifra' } });
    expect(answer.limits[0]).toMatchObject({ name: 'methyl eugenol', shareOfLimit: 1 });
  });

  it('takes given proportions as parts of any whole', () => {
    expect(percentOf([clove(3), lavender(1)])).toBe(percentOf([clove(0.75), lavender(0.25)]));
  });

  it('within ranges takes as little as may be of what binds', () => {
    const free = find([clove([0.1, 0.9]), lavender([0.1, 0.9])]);
    const most = percentOf([clove(0.1), lavender(0.9)]) ?? '';
    expect(free.percent?.toFixed()).toBe(most);
    expect(free.shares[0]).toBeCloseTo(0.1, 12);
  });

  it('is exactly within at the answer, and over a step above it', () => {
    for (const blend of [[clove(1)], [spearmint(1)], [clove(2), spearmint(1), lavender(5)]]) {
      const { percents, percent } = find(blend);
      expect(
        judge(
          blend,
          percents.map((each) => each.toFixed()),
        ),
      ).toEqual([]);
      const step = exact(percent ?? 0).times('1.00000001');
      const above = percents.map((each) =>
        each
          .times(step)
          .div(percent ?? 1)
          .toFixed(),
      );
      expect(judge(blend, above)).not.toEqual([]);
    }
  });

  it('adds phototoxic oils up as shares of their limits', () => {
    const citrus = (name: string, share: number): BlendOil => ({
      ...oil(name, share),
      plantPart: 'peel',
      process: 'expressed',
    });
    const answer = find([citrus('Lemon oil', 1), citrus('Lime oil', 0.35)]);
    expect(answer.percent?.toFixed()).toBe('1.35');
    expect(answer.decidedBy?.name).toBe('phototoxic sum');
  });

  it('undercuts every limit by the margin, so that the worst weighing stays within', () => {
    const blend = [spearmint(1)];
    const { percent, percents } = find(blend, { marginFraction: '0.1' });
    expect(percent?.toFixed()).toBe('0.225');
    const worst = percents.map((each) => each.times('1.1').toFixed());
    expect(judge(blend, worst)).toEqual([]);
  });

  it('holds to a maximum of its own, which decides where it is the lowest', () => {
    expect(find([lavender(1)], { mostPercent: 1 })).toMatchObject({ decidedBy: { name: 'mostPercent' } });
    expect(percentOf([lavender(1)], { mostPercent: 1 })).toBe('1');
    expect(find([spearmint(1)], { mostPercent: 0.25 }).percent?.toFixed()).toBe('0.25');
    expect(find([spearmint(1)], { mostPercent: '0.2499' }).decidedBy?.name).toBe('mostPercent');
    expect(find([spearmint(1)], { mostPercent: '0.2501' }).decidedBy?.name).toBe('carvone');
  });

  it('holds to bounds that no table has', () => {
    const report = {
      name: 'Lavender oil',
      told: { kind: 'assessor' },
      weights: [1],
      mostPercent: '0.4',
    } as const;
    expect(find([lavender(1)], { ownBounds: [report] })).toMatchObject({
      decidedBy: { name: 'Lavender oil', told: { kind: 'assessor' } },
    });
    expect(percentOf([lavender(1)], { ownBounds: [report] })).toBe('0.4');
  });

  it('stays as near to the wish as the limits let it, at the wanted total', () => {
    const blend = [clove([0, 1]), lavender([0, 1])];
    const near = find(blend, { nearest: { wish: [1, 1], percent: '0.2' } });
    // Half of 0.2 % is 0.1 % of clove, within its 0.1538 %.
    expect(near.percents.map((each) => each.toFixed())).toEqual(['0.1', '0.1']);
    const more = find(blend, { nearest: { wish: [1, 1], percent: '0.4' } });
    expect(more.percent?.toFixed()).toBe('0.4');
    expect(more.percents[0]?.toFixed(6)).toBe('0.153846');
  });

  it('finds no limit where none binds, which is not permission', () => {
    expect(find([oil('Sunflower seed oil', 1)])).toMatchObject({
      verdict: 'no-limit-found',
      percent: undefined,
      decidedBy: undefined,
    });
  });

  it('allows nothing of a blend that must hold what is prohibited, and leaves it out where it may', () => {
    const costus = (share: BlendOil['share']) => ({
      ...oil('Costus root oil', share),
      cas: '8023-88-9',
      plantPart: 'root' as const,
    });
    const forced = find([costus(1), lavender(1)]);
    expect(forced.verdict).toBe('prohibited');
    expect(forced.percent?.toFixed()).toBe('0');
    const free = find([costus([0, 1]), lavender([0, 1])]);
    expect(free.verdict).toBe('found');
    expect(free.shares[0]).toBe(0);
  });

  it('refuses shares that cannot be met, naming the oil', () => {
    const codes = (blend: readonly BlendOil[], more: Partial<ScentQuestion> = {}) => {
      const answer = findLargestScent(tables, { ...BODY, blend, ...more });
      return answer.ok ? [] : answer.problems.map(({ code }) => code);
    };
    expect(codes([])).toEqual(['blend-empty']);
    expect(codes([clove(0)])).toEqual(['shares-all-nought']);
    expect(codes([clove(-1)])).toEqual(['share-negative']);
    expect(codes([clove([0.5, 0.4]), lavender([0, 1])])).toEqual(['share-range-crossed']);
    expect(codes([clove([0, 1.1])])).toEqual(['share-above-one']);
    expect(codes([clove([0.6, 1]), lavender([0.5, 1])])).toEqual(['shares-too-much']);
    expect(codes([clove([0, 0.4]), lavender([0, 0.5])])).toEqual(['shares-too-little']);
    expect(codes([clove(1)], { marginFraction: 1 })).toEqual(['margin-out-of-range']);
    expect(codes([clove(1)], { mostPercent: 101 })).toEqual(['percent-out-of-range']);
  });

  const part = fc.integer({ min: 1, max: 20 });

  it('is never over a limit, and with free proportions never less than with any that are given', () => {
    const free = find([clove([0, 1]), spearmint([0, 1]), lavender([0, 1])]);
    fc.assert(
      fc.property(part, part, part, (one, two, three) => {
        const blend = [clove(one), spearmint(two), lavender(three)];
        const { percent, percents } = find(blend);
        expect(
          judge(
            blend,
            percents.map((each) => each.toFixed()),
          ),
        ).toEqual([]);
        expect(
          exact(percent ?? 0)
            .minus(sumOf(percents))
            .abs()
            .lt('0.00000000001'),
        ).toBe(true);
        expect(exact(percent ?? 0).lte(free.percent ?? 0)).toBe(true);
      }),
      { numRuns: 40 },
    );
  });
});
