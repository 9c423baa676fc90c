/**
 * Packs exactly on limit 1 and limit 2, by both ways.
 *
 * Limits: table of Directive 76/211/EEC, Annex I, and SI 2006/659, worked out by hand; a pack is non-standard only below
 * limit 1 and inadequate only below limit 2, so one exactly there is neither. The 30 g pack is the trap of binary
 * arithmetic, 29.4 - 2.1 = 27.299999999999997 in doubles. Tolerance: none, all exact.
 */
import { describe, expect, it } from 'vitest';
import { batchWeightTestCalculation } from '../../src/catalogue/batch-weight-test.ts';
import { netContentsTables } from '../../src/catalogue/index.ts';
import { findTolerableError, judgeFill } from '../../src/core/filling/index.ts';
import { must } from '../../src/core/problem.ts';
import { exact } from '../../src/core/quantity/index.ts';

/** Nominal, limit 1, limit 2; g. */
const LIMITS = [
  ['5', '4.5', '4'],
  ['30', '27.3', '24.6'],
  ['35', '31.8', '28.6'],
  ['60', '55.5', '51'],
  ['110', '105', '100'],
  ['250', '241', '232'],
  ['340', '329.8', '319.6'],
  ['500', '485', '470'],
  ['1000', '985', '970'],
] as const;

describe.each(LIMITS)('a pack of %s g', (nominal, limit1, limit2) => {
  const { tolerableError } = must(findTolerableError(nominal, 'up-0.1', netContentsTables));
  const judge = (basis: 'average' | 'minimum', netGrams: string) =>
    must(
      judgeFill({
        declaredGrams: nominal,
        basis,
        netGrams,
        scaleErrorGrams: 0,
        tolerableErrorGrams: tolerableError,
      }),
    ).verdict;
  const less = (grams: string) => exact(grams).minus('0.000001').toFixed();

  it('on limit 1 stands by the average way, a microgram below it not', () => {
    expect(judge('average', limit1)).toBe('inside');
    expect(judge('average', less(limit1))).toBe('too-light');
  });

  it('on the label stands by the minimum way, a microgram below it not; nor on limit 1', () => {
    expect(judge('minimum', nominal)).toBe('inside');
    expect(judge('minimum', less(nominal))).toBe('too-light');
    expect(judge('minimum', limit1)).toBe('too-light');
  });

  it('is counted below a limit only below it, whatever the batch', () => {
    const weigh = (light: string) =>
      must(
        batchWeightTestCalculation.run({
          nominalGrams: Number(nominal),
          batchSize: 20,
          weightsGrams: [Number(light), ...Array.from({ length: 19 }, () => Number(nominal) * 1.1)],
        }),
      );
    expect(weigh(limit1)).toMatchObject({ belowLimit1: 0, belowLimit2: 0, verdict: 'accept' });
    expect(weigh(less(limit1))).toMatchObject({ belowLimit1: 1, belowLimit2: 0 });
    expect(weigh(limit2)).toMatchObject({ belowLimit1: 1, belowLimit2: 0 });
    expect(weigh(less(limit2))).toMatchObject({
      belowLimit2: 1,
      verdict: 'reject',
      decidedBy: 'below-limit-2',
    });
  });
});

it('29.4 g gross less 2.1 g tare is exactly limit 1 of 30 g', () => {
  expect(29.4 - 2.1).toBeLessThan(27.3);
  expect(exact('29.4').minus('2.1').toFixed()).toBe('27.3');
});
