import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chartTables } from '../../catalogue/index.ts';
import { must } from '../problem.ts';
import { exact, toText } from '../quantity/index.ts';
import { type ChartWish, findControlChart } from './find-control-chart.ts';

const chart = (wish: ChartWish) => must(findControlChart(wish, chartTables));
const individuals = (...values: (string | number)[]) => chart({ kind: 'individuals', values });

describe('a control chart', () => {
  it('of equal values is a line, with nothing beyond it', () => {
    const { centre, upper, lower, outside, spreadOutside } = individuals(5, 5, 5);
    expect([centre, upper, lower].map((value) => toText(value))).toEqual(['5', '5', '5']);
    expect([outside, spreadOutside]).toEqual([[], []]);
  });

  it('tells a value beyond its limit by its place, and the jumps to it and back', () => {
    const steady = Array.from({ length: 20 }, (_, index) => (index % 2 === 0 ? '10' : '10.1'));
    const { outside, spreadOutside } = individuals(...steady, '12', ...steady);
    expect(outside).toEqual([20]);
    expect(spreadOutside).toEqual([19, 20]);
  });

  it('takes a subgroup just on its limit for inside of it, and one a trifle beyond for outside', () => {
    // Three groups of two with ranges 0.1, mean range 0.1, A2 = 1.88: the limit lies 0.188 from the grand mean.
    const withLast = (middle: string) => {
      const group = (at: string) => [exact(at).minus('0.05'), exact(at).plus('0.05')];
      return chart({
        kind: 'mean-range',
        values: [
          group(exact(middle).div(-2).toFixed()),
          group(exact(middle).div(-2).toFixed()),
          group(middle),
        ],
      });
    };
    expect(withLast('0.188').outside).toEqual([]);
    expect(withLast('0.188002').outside).toEqual([2]);
  });

  it('moves with its values, and widens with them', () => {
    const values = fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 2, maxLength: 30 });
    fc.assert(
      fc.property(values, fc.integer({ min: -500, max: 500 }), (given, shift) => {
        const one = individuals(...given);
        const moved = individuals(...given.map((value) => value + shift));
        expect(moved.upper.minus(one.upper).minus(shift).abs().lt('1e-40')).toBe(true);
        expect(moved.outside).toEqual(one.outside);
        const wide = individuals(...given.map((value) => value * 3));
        expect(wide.spreadUpper.minus(one.spreadUpper.times(3)).abs().lt('1e-40')).toBe(true);
        expect(wide.outside).toEqual(one.outside);
      }),
    );
  });

  it('is refused for too little, for unequal subgroups and for sizes that no table has', () => {
    const codeOf = (wish: ChartWish) => {
      const found = findControlChart(wish, chartTables);
      return found.ok ? null : [found.problems[0]?.code, found.problems[0]?.where];
    };
    expect(codeOf({ kind: 'individuals', values: [1] })).toEqual(['chart-too-few', 'values']);
    expect(codeOf({ kind: 'mean-range', values: [] })).toEqual(['chart-too-few', 'values']);
    expect(codeOf({ kind: 'mean-range', values: [[1, 2], [1]] })).toEqual([
      'subgroups-not-equal',
      'values[1]',
    ]);
    expect(codeOf({ kind: 'mean-deviation', values: [[1], [2]] })).toEqual([
      'subgroup-size-not-in-table',
      'values',
    ]);
    const many = Array.from({ length: 26 }, (_, index) => index);
    expect(codeOf({ kind: 'mean-deviation', values: [many] })).toEqual([
      'subgroup-size-not-in-table',
      'values',
    ]);
    expect(codeOf({ kind: 'mean-deviation', values: [many.slice(1)] })).toBeNull();
  });
});
