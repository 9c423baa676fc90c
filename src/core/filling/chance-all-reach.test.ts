import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { chanceAllReach } from './chance-all-reach.ts';
import { normalShareBelow } from './normal-share.ts';
import { studentQuantile } from './student-quantile.ts';

const chance = (k: number, meanOf: number, degreesOfFreedom: number, further: number) =>
  must(chanceAllReach({ mean: k, meanOf, standardDeviation: 1, degreesOfFreedom }, 0, further));

describe('the chance that all further weights reach the least', () => {
  /** Student's t, upper 5 % and 1 %: NIST/SEMATECH e-Handbook 1.3.6.7.2 (2.132 and 3.747 of 4, 1.812 of 10, 6.314 of 1). */
  it.each([
    [0.95, 2.132, 4],
    [0.99, 3.747, 4],
    [0.95, 1.812, 10],
    [0.95, 6.314, 1],
    [0.95, 12.706 / 2, 1],
  ])('is, for one more, the prediction interval of Student: %f at t = %f of %i', (share, t, f) => {
    const n = f + 1;
    const found = chance(t * Math.sqrt(1 + 1 / n), n, f, 1);
    expect(Math.abs(found - share)).toBeLessThan(0.0005);
    const exactT = studentQuantile(share, f) * Math.sqrt(1 + 1 / n);
    expect(Math.abs(chance(exactT, n, f, 1) - share)).toBeLessThan(1e-5);
  });

  /** Standard normal distribution: NIST/SEMATECH e-Handbook 1.3.6.7.1, 0.97725 below 2. */
  it('is the power of the normal share where mean and spread are known well', () => {
    expect(Math.abs(chance(2, 1e9, 100_000, 10) - 0.97725 ** 10)).toBeLessThan(2e-4);
    expect(normalShareBelow(2)).toBeCloseTo(0.97725, 5);
    expect(normalShareBelow(-2)).toBeCloseTo(0.02275, 5);
  });

  it('lies between what independence and what the sum of all misses would give', () => {
    for (const k of [0.5, 1.5, 3]) {
      const one = chance(k, 6, 5, 1);
      const all = chance(k, 6, 5, 12);
      expect(all).toBeGreaterThan(one ** 12);
      expect(all).toBeLessThan(one);
      expect(all).toBeGreaterThan(1 - 12 * (1 - one) - 1e-9);
    }
  });

  it('agrees with drawn samples', () => {
    // A generator with a seed (linear congruential, modulus 2^32, Numerical Recipes): the same draws each time.
    let state = 20_261_126;
    const draw = () => {
      state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
      return (state + 0.5) / 2 ** 32;
    };
    const normal = () => Math.sqrt(-2 * Math.log(draw())) * Math.cos(2 * Math.PI * draw());
    const [n, m, k, rounds] = [4, 8, 2, 40_000];
    let reached = 0;
    for (let round = 0; round < rounds; round += 1) {
      const seen = Array.from({ length: n }, normal);
      const mean = seen.reduce((sum, x) => sum + x, 0) / n;
      const s = Math.sqrt(seen.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (n - 1));
      if (Array.from({ length: m }, normal).every((x) => x >= mean - k * s)) reached += 1;
    }
    // Three standard errors of so many draws.
    expect(Math.abs(reached / rounds - chance(k, n, n - 1, m))).toBeLessThan(0.0075);
  });

  it('is sure of nothing more, and half for a mean on the label that is known well', () => {
    expect(chance(1, 3, 2, 0)).toBe(1);
    expect(chance(0, 1e9, 1000, 1)).toBeCloseTo(0.5, 6);
    expect(chance(-40, 10, 9, 3)).toBeLessThan(1e-6);
    expect(chance(60, 10, 9, 100)).toBeGreaterThan(0.999);
  });

  it('refuses a spread of nothing', () => {
    const weighed = { mean: 36, meanOf: 3, standardDeviation: 0, degreesOfFreedom: 2 };
    const found = chanceAllReach(weighed, 35, 10);
    expect(!found.ok && found.problems[0]).toMatchObject({
      code: 'value-not-above',
      where: 'standardDeviation',
    });
  });
});
