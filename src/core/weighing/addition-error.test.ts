import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scaleTables } from '../../catalogue/index.ts';
import { must } from '../problem.ts';
import { findAdditionError, type Weighing } from './addition-error.ts';

const small: Weighing = { weightGrams: '1.3', readabilityGrams: '0.1', readings: 2, inService: false };
const errorOf = (change: Partial<Weighing> = {}) =>
  must(findAdditionError({ ...small, ...change }, scaleTables));
const classed = { accuracyClass: 'III', verificationIntervalGrams: '0.1' } as const;

describe('error of one addition', () => {
  it('adds the permissible error to the rounding in the worst case', () => {
    expect(errorOf().worstCaseGrams.toFixed()).toBe('0.1');
    expect(errorOf({ classed }).worstCaseGrams.toFixed()).toBe('0.15');
    expect(errorOf({ classed, inService: true }).worstCaseGrams.toFixed()).toBe('0.2');
  });

  it('takes twice the repeatability where no class tells more', () => {
    expect(errorOf({ repeatabilityGrams: '0.1' }).worstCaseGrams.toFixed()).toBe('0.3');
    expect(errorOf({ repeatabilityGrams: '0.01', classed }).worstCaseGrams.toFixed()).toBe('0.15');
  });

  it('knows nothing of a smallest load without a class', () => {
    expect(errorOf().belowMinimumLoad).toBeNull();
    expect(errorOf({ classed }).belowMinimumLoad).toBe(true);
  });

  it('refuses a load beyond the class instead of inventing an error', () => {
    const found = findAdditionError({ ...small, weightGrams: '1000.1', classed }, scaleTables);
    expect(found).toMatchObject({ ok: false, problems: [{ code: 'load-outside-class' }] });
  });

  it('grows in proportion when weight, step and repeatability do: the relative error stays', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 1000 }), (times) => {
        const once = errorOf({ repeatabilityGrams: '0.03' });
        const more = errorOf({
          weightGrams: 1.3 * times,
          readabilityGrams: 0.1 * times,
          repeatabilityGrams: 0.03 * times,
        });
        expect(more.relativeExpanded.toNumber()).toBeCloseTo(once.relativeExpanded.toNumber(), 10);
        expect(more.worstCaseRelative.toNumber()).toBeCloseTo(once.worstCaseRelative.toNumber(), 10);
      }),
    );
  });

  it('never lets the expanded uncertainty of rounding alone exceed the worst case', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(1 as const, 2 as const),
        fc.integer({ min: 1, max: 5000 }),
        (readings, tenths) => {
          const found = errorOf({ readings, weightGrams: tenths / 10 });
          // 2 d / sqrt(6) = 0.816 d below d; 2 d / sqrt(12) = 0.577 d above d / 2: k = 2 reaches past a single rectangle.
          const bound = readings === 2 ? 1 : 2 / Math.sqrt(3) + 1e-9;
          expect(found.relativeExpanded.lte(found.worstCaseRelative.times(bound))).toBe(true);
        },
      ),
    );
  });
});
