import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { netContentsTables } from '../../catalogue/index.ts';
import { must } from '../problem.ts';
import { exact } from '../quantity/index.ts';
import type { Rounding } from './net-contents-tables.ts';
import { findTolerableError } from './tolerable-error.ts';

const errorOf = (nominal: number | string, rounding: Rounding = 'up-0.1') =>
  must(findTolerableError(nominal, rounding, netContentsTables));
const inRange = fc.integer({ min: 5000, max: 25_000_000 }).map((thousandths) => exact(thousandths).div(1000));

describe('tolerable error', () => {
  // Both sides of every band edge of Directive 76/211/EEC: the last of a band, and a thousandth above it.
  it.each([
    ['50', '4.5', '50.001', '4.5'],
    ['100', '4.5', '100.001', '4.6'],
    ['200', '9', '200.001', '9'],
    ['300', '9', '300.001', '9.1'],
    ['500', '15', '500.001', '15'],
    ['1000', '15', '1000.001', '15.1'],
    ['10000', '150', '10000.001', '150'],
    ['15000', '150', '15000.001', '150.1'],
  ])('at %s is %s, at %s is %s', (edge, atEdge, above, aboveEdge) => {
    expect(errorOf(edge).tolerableError.toFixed()).toBe(atEdge);
    expect(errorOf(above).tolerableError.toFixed()).toBe(aboveEdge);
  });

  it('rounds to whole grams above 1000 g by R 87 only', () => {
    expect(errorOf('1100', 'r87').tolerableError.toFixed()).toBe('17');
    expect(errorOf('1100').tolerableError.toFixed()).toBe('16.5');
    expect(errorOf('1000', 'r87').tolerableError.toFixed()).toBe('15');
  });

  it('does not count a pack of exactly limit 1 as below it, where binary arithmetic does', () => {
    const { limit1 } = errorOf(30);
    expect(29.4 - 2.1 < 27.3).toBe(true);
    expect(exact('29.4').minus('2.1').lt(limit1)).toBe(false);
    expect(exact('29.399').minus('2.1').lt(limit1)).toBe(true);
  });

  it('puts the limits one and two errors below, and a fifth of the error as largest measuring error', () => {
    fc.assert(
      fc.property(inRange, (nominal) => {
        const { tolerableError, limit1, limit2, largestMeasuringError } = errorOf(nominal.toFixed());
        expect(nominal.minus(limit1).eq(tolerableError)).toBe(true);
        expect(limit1.minus(limit2).eq(tolerableError)).toBe(true);
        expect(largestMeasuringError.times(5).eq(tolerableError)).toBe(true);
      }),
    );
  });

  it('never falls as the declared content grows', () => {
    fc.assert(
      fc.property(inRange, inRange, (one, other) => {
        const [less, more] = one.lte(other) ? [one, other] : [other, one];
        expect(errorOf(less.toFixed()).tolerableError.lte(errorOf(more.toFixed()).tolerableError)).toBe(true);
      }),
    );
  });

  it('is rounded up by less than a tenth, and R 87 never below that', () => {
    fc.assert(
      fc.property(inRange, (nominal) => {
        const { tolerableError } = errorOf(nominal.toFixed());
        const isPercent = (['50', '200', '500', '10000'] as const).some(
          (edge, index) => nominal.lte(edge) && nominal.gt([0, 100, 300, 1000][index] ?? 0),
        );
        const percent = nominal.lte(50) ? 9 : nominal.lte(200) ? 4.5 : nominal.lte(500) ? 3 : 1.5;
        if (isPercent) {
          const surplus = tolerableError.minus(nominal.times(percent).div(100));
          expect(surplus.gte(0) && surplus.lt('0.1')).toBe(true);
        }
        expect(errorOf(nominal.toFixed(), 'r87').tolerableError.gte(tolerableError)).toBe(true);
      }),
    );
  });

  it('refuses what lies outside of the average system, on both sides of both ends', () => {
    const codeOf = (nominal: string) => {
      const found = findTolerableError(nominal, 'up-0.1', netContentsTables);
      return found.ok ? 'answered' : found.problems[0]?.code;
    };
    expect(['4.999', '5', '25000', '25000.001'].map(codeOf)).toEqual([
      'no-tolerable-error',
      'answered',
      'answered',
      'no-tolerable-error',
    ]);
  });
});
