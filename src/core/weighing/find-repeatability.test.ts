import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { findRepeatability } from './find-repeatability.ts';

const small = { readabilityGrams: '0.01', capacityGrams: '200' };
const TEN = ['100', '100.01', '100', '99.99', '100', '100.01', '100', '100', '99.99', '100'];

describe('ten weighings', () => {
  it('have mean, standard deviation and span', () => {
    const found = must(findRepeatability(TEN, small));
    expect([found.count, found.meanGrams.toFixed(), found.spanGrams.toFixed()]).toEqual([10, '100', '0.02']);
    // Four readings differ by 0.01: s = sqrt(4 x 0.0001 / 9) = 0.00667 g.
    expect(found.deviationGrams.toNumber()).toBeCloseTo(Math.sqrt(0.0004 / 9), 12);
  });

  it('that are all the same have no deviation', () => {
    const found = must(
      findRepeatability(
        Array.from({ length: 10 }, () => '50'),
        small,
      ),
    );
    expect(found.deviationGrams.isZero()).toBe(true);
  });

  it('lose no digit where the readings are large beside their differences', () => {
    // As in the certified data sets NumAcc of NIST StRD (from memory), where doubles lose the small differences:
    // 1 four times, 2 and 3 three times each, mean 1.9, squares about it 6.9.
    const readings = [1, 1, 1, 1, 2, 2, 2, 3, 3, 3].map((last) => 10_000_000 + last);
    const found = must(findRepeatability(readings, { readabilityGrams: 1, capacityGrams: 20_000_000 }));
    expect(found.deviationGrams.toNumber()).toBeCloseTo(Math.sqrt(6.9 / 9), 12);
  });

  it('repeat as well wherever on the scale they lie', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 500 }), { minLength: 10, maxLength: 20 }),
        fc.integer({ min: 0, max: 100 }),
        (steps, shift) => {
          const at = (by: number) =>
            must(
              findRepeatability(
                steps.map((step) => (step + by) / 100),
                { ...small, readabilityGrams: '0.01' },
              ),
            );
          expect(at(shift).deviationGrams.minus(at(0).deviationGrams).abs().lt('1e-40')).toBe(true);
        },
      ),
    );
  });

  it('are refused where there are nine, or where one is nothing, above capacity or no step', () => {
    expect(findRepeatability(TEN.slice(1), small)).toMatchObject({
      problems: [{ code: 'test-too-few', found: 9, allowed: 10 }],
    });
    expect(findRepeatability([...TEN.slice(3), '0', '200.01', '1.005'], small)).toMatchObject({
      problems: [
        { code: 'value-not-above', where: 'readings[7]' },
        { code: 'reading-above-capacity', where: 'readings[8]' },
        { code: 'reading-not-a-step', where: 'readings[9]' },
      ],
    });
    expect(findRepeatability([...TEN.slice(1), '200'], small).ok).toBe(true);
  });
});
