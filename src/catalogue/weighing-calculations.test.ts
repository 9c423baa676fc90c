import { describe, expect, it } from 'vitest';
import { additionErrorCalculation } from './addition-error.ts';
import type { Calculation } from './define-calculation.ts';
import { scaleErrorsCalculation } from './scale-errors.ts';
import { smallestWeightCalculation } from './smallest-weight.ts';
import { weighingCalculations } from './weighing-calculations.ts';

const listed: readonly Calculation[] = weighingCalculations;

function codesOf(calculation: Calculation, input: unknown): string[] {
  const result = calculation.run(input);
  return result.ok ? [] : result.problems.map(({ code, where }) => `${code} at ${where}`);
}

describe('the weighing calculations', () => {
  it.each(listed)('$name answers its example, in its own schema', (calculation) => {
    const result = calculation.run(calculation.example.input);
    expect(result).toEqual({ ok: true, value: calculation.example.output });
    expect(calculation.output.safeParse(calculation.example.output).success).toBe(true);
  });

  it.each(listed)('$name refuses a field that it does not know, and an empty input', (calculation) => {
    const { input } = calculation.example;
    expect(codesOf(calculation, { ...(input as object), colour: 'green' })).toEqual([
      'field-unknown at colour',
    ]);
    expect(codesOf(calculation, {})).not.toEqual([]);
  });
});

describe('smallest-weight', () => {
  it.each([
    [{ readabilityGrams: 0, relativeTolerance: 0.01 }, 'value-too-small at readabilityGrams'],
    [{ readabilityGrams: 0.1, relativeTolerance: 0 }, 'value-too-small at relativeTolerance'],
    [{ readabilityGrams: 0.1, relativeTolerance: 1.01 }, 'value-too-large at relativeTolerance'],
    [
      { readabilityGrams: 0.1, relativeTolerance: 0.01, repeatabilityGrams: -1 },
      'value-too-small at repeatabilityGrams',
    ],
  ])('refuses %j', (input, code) => {
    expect(codesOf(smallestWeightCalculation, input)).toEqual([code]);
  });
});

describe('addition-error', () => {
  const small = { weightGrams: 1.3, readabilityGrams: 0.1 };

  it('does not know whether a weight lies below the smallest load without a class', () => {
    expect(additionErrorCalculation.run(small)).toMatchObject({ value: { belowMinimumLoad: null } });
  });

  it('counts half a step for one reading', () => {
    const found = additionErrorCalculation.run({ weightGrams: 1, readabilityGrams: 0.1, readings: 1 });
    expect(found).toMatchObject({ value: { worstCaseRelative: 0.05 } });
    // 0.2887 d: half-width d / 2 of a rectangle over the root of three.
    expect(found.ok && found.value.standardUncertaintyGrams).toBeCloseTo(0.02887, 5);
  });

  it('is below the smallest load just below it, not at it', () => {
    const at = (weightGrams: number) =>
      additionErrorCalculation.run({
        weightGrams,
        readabilityGrams: 0.1,
        accuracyClass: 'III',
        verificationIntervalGrams: 0.1,
      });
    expect(at(1.9999)).toMatchObject({ value: { belowMinimumLoad: true } });
    expect(at(2)).toMatchObject({ value: { belowMinimumLoad: false } });
  });

  it.each([
    [{ ...small, accuracyClass: 'III' }, 'class-and-interval-together at verificationIntervalGrams'],
    [{ ...small, verificationIntervalGrams: 0.1 }, 'class-and-interval-together at accuracyClass'],
    [{ ...small, inService: true }, 'class-and-interval-together at accuracyClass'],
    [{ ...small, readings: 3 }, 'value-not-one-of at readings'],
    [{ ...small, weightGrams: 0 }, 'value-too-small at weightGrams'],
    [{ ...small, accuracyClass: 'V', verificationIntervalGrams: 1 }, 'value-not-one-of at accuracyClass'],
    [
      { ...small, weightGrams: 1000.1, accuracyClass: 'III', verificationIntervalGrams: 0.1 },
      'load-outside-class at loadGrams',
    ],
  ])('refuses %j', (input, code) => {
    expect(codesOf(additionErrorCalculation, input)).toEqual([code]);
  });
});

describe('scale-errors', () => {
  const asked = { accuracyClass: 'III', verificationIntervalGrams: 1, loadGrams: 0 };

  it('has an error at no load', () => {
    expect(scaleErrorsCalculation.run(asked)).toMatchObject({ value: { initialGrams: 0.5 } });
  });

  it.each([
    [{ ...asked, loadGrams: 10_000.001 }, 'load-outside-class at loadGrams'],
    [{ ...asked, loadGrams: -1 }, 'value-too-small at loadGrams'],
    [{ ...asked, verificationIntervalGrams: 0.05 }, 'interval-not-of-class at verificationIntervalGrams'],
    [{ ...asked, verificationIntervalGrams: 3 }, 'interval-not-of-class at verificationIntervalGrams'],
    [
      { ...asked, accuracyClass: 'IIII', verificationIntervalGrams: 4.99 },
      'interval-not-of-class at verificationIntervalGrams',
    ],
  ])('refuses %j', (input, code) => {
    expect(codesOf(scaleErrorsCalculation, input)).toEqual([code]);
  });
});
