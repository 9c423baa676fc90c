import { describe, expect, it } from 'vitest';
import type { OpenedRevision } from '../../check/index.ts';
import { exact } from '../../core/quantity/index.ts';
import { exposeSubstances } from './expose-substances.ts';
import { exposureUsesOf } from './exposure-uses.ts';

type Details = OpenedRevision['details'];

const use = (productType: string, category = '5A') =>
  ({ use: 'leave-on', category, bodyPart: '', productType }) as const;
const details = (first: string, others: readonly string[] = [], more: Partial<Details> = {}) =>
  ({
    ...use(first),
    alsoUsedAs: others.map((one) => use(one)),
    minAgeMonths: null,
    ...more,
  }) as unknown as Details;

describe('what somebody gets by every use of a product', () => {
  // SCCS Notes of Guidance, 12th revision, Table 3A: 123.2, 32.7 and 24.14 mg/kg of body weight and day.
  it('adds the uses up', () => {
    const { types, missing } = exposureUsesOf(details('body-lotion', ['hand-cream', 'face-cream']));
    const sum = types.reduce((all, row) => all.plus(row.relativeExposureMgPerKgDay), exact(0));
    expect(sum.toFixed()).toBe('180.04');
    expect(missing).toEqual([]);
  });

  it('counts a use once, and names one that the table has no row for', () => {
    const uses = exposureUsesOf(details('body-lotion', ['body-lotion', 'moon-cream']));
    expect(uses.types.map(({ id }) => id)).toEqual(['body-lotion']);
    expect(uses.missing).toEqual(['moon-cream']);
  });

  it('is not worked out by the other uses where the first has no row', () => {
    expect(exposureUsesOf(details('moon-cream', ['hand-cream'])).types).toEqual([]);
    expect(exposureUsesOf(details('', ['hand-cream']), 'body-lotion').types).toHaveLength(2);
    expect(exposureUsesOf(undefined).types).toEqual([]);
  });

  it('knows how much more skin a child has, by the youngest that it is meant for', () => {
    const timesAt = (minAgeMonths: number | null) =>
      exposureUsesOf(details('body-lotion', [], { minAgeMonths })).child?.times;
    expect([0, 5, 6, 11, 12, 59, 60, 119, 120, 215].map(timesAt)).toEqual([
      2.3, 2.3, 1.8, 1.8, 1.6, 1.6, 1.5, 1.5, 1.3, 1.3,
    ]);
    expect(timesAt(216)).toBeUndefined();
    expect(timesAt(null)).toBeUndefined();
    const ofBabies = exposureUsesOf(details('body-lotion', [], { category: '5D' }));
    expect(ofBabies.child).toEqual({ months: 0, times: 2.3 });
  });
});

describe('the margin of safety of several uses', () => {
  const opened = {
    contributions: [
      {
        name: 'Linalool',
        mostPercent: { toExact: () => exact(1) },
        fromMaterials: [],
        confidence: 'supplier',
      },
    ],
  } as unknown as OpenedRevision;
  const marginWith = (uses: ReturnType<typeof exposureUsesOf>, milligramsPerKgDay: string) => {
    const point = {
      name: 'Linalool',
      milligramsPerKgDay,
      route: 'systemic',
      source: 'invented',
      absorptionPercent: '100',
      bioavailabilityPercent: null,
    };
    const [row] = exposeSubstances(opened, uses, [
      point as unknown as Parameters<typeof exposeSubstances>[2][number],
    ]);
    return [row?.marginOfSafety?.toSignificantDigits(6).toFixed(), row?.isEnough];
  };

  it('is that of all of them together, never of the first alone', () => {
    const alone = exposureUsesOf(details('body-lotion'));
    const all = exposureUsesOf(details('body-lotion', ['hand-cream', 'face-cream']));
    // 1 % of 123.2 mg/kg is 1.232; 110 times that is 135.52. By all three: 135.52 / 1.8004.
    expect(marginWith(alone, '135.52')).toEqual(['110', true]);
    expect(marginWith(all, '135.52')).toEqual(['75.2722', false]);
  });

  it('is never said to be enough for a child by an adult’s figure, and below stays below', () => {
    const child = exposureUsesOf(details('body-lotion', [], { minAgeMonths: 0 }));
    expect(marginWith(child, '135.52')).toEqual(['110', null]);
    expect(marginWith(child, '123.19')[1]).toBe(false);
  });
});
