import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Fraction, fractionOf, type LinearAnswer, maximise } from './index.ts';

/** Its types say that it is a module of another kind than it is. */
const loadHighs = createRequire(import.meta.url)('highs') as typeof import('highs')['default'];

const row = (coefficients: readonly (number | string)[], most: number | string) => ({
  coefficients: coefficients.map(fractionOf),
  most: fractionOf(most),
});
const solve = (objective: readonly number[], rows: ReturnType<typeof row>[]) =>
  maximise({ objective: objective.map(fractionOf), rows });
const shown = (fraction: Fraction): string => `${fraction.numerator}/${fraction.denominator}`;
const optimal = (answer: LinearAnswer) => {
  if (answer.status !== 'optimal') throw new Error(answer.status);
  return answer;
};

describe('an exact linear program', () => {
  // V. Chvatal, Linear Programming (1983), chapter 2: z = 13 at (2, 0, 1). From memory of the printed page.
  it('finds the printed optimum of a textbook', () => {
    const answer = optimal(solve([5, 4, 3], [row([2, 3, 1], 5), row([4, 1, 2], 11), row([3, 4, 2], 8)]));
    expect(shown(answer.value)).toBe('13/1');
    expect(answer.point.map(shown)).toEqual(['2/1', '0/1', '1/1']);
    expect(answer.prices.map(shown)).toEqual(['1/1', '0/1', '1/1']);
  });

  // The same book, chapter 3: the origin lies outside; z = 3/5 at (0, 14/5, 17/5). From memory of the printed page.
  it('finds a way in where the origin lies outside', () => {
    const answer = optimal(
      solve([1, -1, 1], [row([2, -1, 2], 4), row([2, -3, 1], -5), row([-1, 1, -2], -1)]),
    );
    expect(shown(answer.value)).toBe('3/5');
    expect(answer.point.map(shown)).toEqual(['0/1', '14/5', '17/5']);
  });

  // E. M. L. Beale, Cycling in the dual simplex algorithm (1955): goes round for ever with the usual choice.
  it('ends where the usual choice goes round for ever', () => {
    const answer = optimal(
      solve(
        [0.75, -150, 0.02, -6],
        [row([0.25, -60, -0.04, 9], 0), row([0.5, -90, -0.02, 3], 0), row([0, 0, 1, 0], 1)],
      ),
    );
    expect(shown(answer.value)).toBe('1/20');
  });

  it('says where nothing lies inside, and where there is no end', () => {
    expect(solve([1], [row([1], 1), row([-1], -2)])).toEqual({ status: 'infeasible' });
    expect(solve([1, 1], [row([1, -1], 1)])).toEqual({ status: 'unbounded' });
    expect(solve([-1], [row([-1], -2)])).toMatchObject({ status: 'optimal' });
    expect(shown(optimal(solve([-1], [row([-1], -2)])).value)).toBe('-2/1');
  });

  it('keeps a third a third', () => {
    const answer = optimal(solve([1], [row([3], 1)]));
    expect(answer.point.map(shown)).toEqual(['1/3']);
    expect(answer.point[0]?.roundedDown(4).toFixed()).toBe('0.3333');
  });

  const small = fc.integer({ min: -5, max: 9 });
  const programs = fc.tuple(
    fc.array(small, { minLength: 3, maxLength: 3 }),
    fc.array(fc.tuple(fc.array(small, { minLength: 3, maxLength: 3 }), fc.integer({ min: -6, max: 20 })), {
      minLength: 1,
      maxLength: 5,
    }),
  );

  it('keeps within every row, and its prices say what the value is made of (strong duality)', () => {
    fc.assert(
      fc.property(programs, ([objective, given]) => {
        const rows = given.map(([coefficients, most]) => row(coefficients, most));
        const answer = solve(objective, rows);
        if (answer.status !== 'optimal') return;
        const dot = (left: readonly Fraction[], right: readonly Fraction[]) =>
          left.reduce(
            (sum, each, index) => sum.plus(each.times(right[index] ?? fractionOf(0))),
            fractionOf(0),
          );
        for (const each of answer.point) expect(each.sign).toBeGreaterThanOrEqual(0);
        for (const { coefficients, most } of rows)
          expect(dot(coefficients, answer.point).compare(most)).toBeLessThanOrEqual(0);
        for (const each of answer.prices) expect(each.sign).toBeGreaterThanOrEqual(0);
        const worth = dot(
          answer.prices,
          rows.map(({ most }) => most),
        );
        expect(shown(worth)).toBe(shown(answer.value));
        expect(shown(dot(objective.map(fractionOf), answer.point))).toBe(shown(answer.value));
      }),
    );
  });

  // HiGHS 1.15 (MIT), a general-purpose solver in floating point: its default tolerance is 1e-7.
  it('agrees with a general-purpose solver', async () => {
    const highs = await loadHighs();
    const asked = fc.sample(programs, { numRuns: 200, seed: 20261126 });
    const statuses = new Set<string>();
    for (const [objective, given] of asked) {
      const own = solve(
        objective,
        given.map(([coefficients, most]) => row(coefficients, most)),
      );
      const { Status, ObjectiveValue } = highs.solve(writeProgram(objective, given));
      statuses.add(own.status);
      if (own.status === 'optimal') expect(ObjectiveValue).toBeCloseTo(own.value.near, 6);
      else expect(Status.toLowerCase()).toContain(own.status);
    }
    expect([...statuses].sort()).toEqual(['infeasible', 'optimal', 'unbounded']);
    // Loading the solver takes most of it; a busy machine takes longer.
  }, 60_000);
});

/** In the LP file format that the solver reads. */
function writeProgram(
  objective: readonly number[],
  rows: readonly (readonly [readonly number[], number])[],
): string {
  const form = (coefficients: readonly number[]) =>
    coefficients.map((each, index) => `${each < 0 ? '-' : '+'} ${Math.abs(each)} x${index}`).join(' ');
  const lines = rows.map(([coefficients, most], index) => ` r${index}: ${form(coefficients)} <= ${most}`);
  return `Maximize\n obj: ${form(objective)}\nSubject To\n${lines.join('\n')}\nEnd\n`;
}
