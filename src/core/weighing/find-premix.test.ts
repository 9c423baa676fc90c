import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { exact } from '../quantity/index.ts';
import { findPremix } from './find-premix.ts';

describe('a premix', () => {
  it('thins ten times what is ten times too small', () => {
    const premix = must(findPremix({ doseGrams: '0.41', smallestWeighableGrams: '4.1' }));
    expect(
      [premix.factor, premix.premixTotalGrams, premix.carrierGrams, premix.portionGrams].map(String),
    ).toEqual(['10', '41', '36.9', '4.1']);
  });

  it('grows with the portion that is wanted', () => {
    const premix = must(findPremix({ doseGrams: '0.5', smallestWeighableGrams: '2', portionGrams: '10' }));
    expect([premix.factor, premix.premixTotalGrams, premix.carrierGrams].map(String)).toEqual([
      '4',
      '40',
      '38',
    ]);
  });

  it('of a dose that can just be weighed is that dose, without a carrier', () => {
    const premix = must(findPremix({ doseGrams: '4.1', smallestWeighableGrams: '4.1' }));
    expect(premix.factor.toNumber()).toBe(1);
    expect(premix.carrierGrams.toNumber()).toBe(0);
    expect(findPremix({ doseGrams: '4.11', smallestWeighableGrams: '4.1' })).toMatchObject({
      problems: [{ code: 'premix-not-needed', where: 'doseGrams', found: '4.11', allowed: '4.1' }],
    });
  });

  it('holds the dose in each portion, and what is put together is what it weighs', () => {
    const thousandths = fc.integer({ min: 1, max: 5000 });
    fc.assert(
      fc.property(thousandths, thousandths, thousandths, (dose, more, extra) => {
        const doseGrams = exact(dose).div(1000);
        const least = doseGrams.plus(exact(more).div(1000));
        const portionGrams = least.plus(exact(extra).div(1000));
        const premix = must(findPremix({ doseGrams, smallestWeighableGrams: least, portionGrams }));
        expect(premix.carrierGrams.plus(least).eq(premix.premixTotalGrams)).toBe(true);
        const held = premix.portionGrams.times(least).div(premix.premixTotalGrams);
        expect(held.minus(doseGrams).abs().lte('1e-50')).toBe(true);
        expect(premix.carrierGrams.gte(0)).toBe(true);
      }),
    );
  });

  it('is refused for no dose, and for a portion that cannot be weighed', () => {
    expect(findPremix({ doseGrams: 0, smallestWeighableGrams: 1 })).toMatchObject({
      problems: [{ code: 'value-not-above' }],
    });
    expect(findPremix({ doseGrams: '0.1', smallestWeighableGrams: 1, portionGrams: '0.99' })).toMatchObject({
      problems: [{ code: 'portion-below-smallest', allowed: '1' }],
    });
    expect(findPremix({ doseGrams: '0.1', smallestWeighableGrams: 1, portionGrams: 1 }).ok).toBe(true);
  });
});
