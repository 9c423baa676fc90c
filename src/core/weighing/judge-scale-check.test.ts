import { describe, expect, it } from 'vitest';
import { scaleTables } from '../../catalogue/index.ts';
import { must } from '../problem.ts';
import { findActionLimit, judgeScaleCheck } from './judge-scale-check.ts';
import type { Scale } from './scale.ts';

const small: Scale = { id: 'small', name: 'Small scale', capacityGrams: 200, readabilityGrams: '0.01' };
const limitOf = (scale: Scale, weightGrams = '100', toleranceGrams = '0') =>
  must(findActionLimit(scale, { weightGrams, toleranceGrams }, scaleTables));

describe('the limit of a daily check', () => {
  it('is one step of the scale where nothing else is known of it', () => {
    // 2 x 0.41 x 0.01 = 0.0082 g, up to the next step.
    expect(limitOf(small)).toMatchObject({ decidedBy: 'readability', isWeightRough: false });
    expect(limitOf(small).limitGrams.toFixed()).toBe('0.01');
  });

  it('is twice the repeatability, up to the next step', () => {
    const shaky = limitOf({ ...small, repeatabilityGrams: '0.012' });
    expect([shaky.limitGrams.toFixed(), shaky.decidedBy]).toEqual(['0.03', 'repeatability']);
    expect(limitOf({ ...small, repeatabilityGrams: '0.01' }).limitGrams.toFixed()).toBe('0.02');
    expect(limitOf({ ...small, repeatabilityGrams: '0.0041' }).decidedBy).toBe('readability');
  });

  it('is the error in service and half a step where the class is known', () => {
    // Class II, e = 0.1 g, 100 g = 1000 e: 0.5 e when verified, 0.1 g in service.
    const verified: Scale = { ...small, accuracyClass: 'II', verificationIntervalGrams: '0.1' };
    expect(limitOf(verified)).toMatchObject({ decidedBy: 'class' });
    expect(limitOf(verified).limitGrams.toFixed()).toBe('0.105');
    const worn = limitOf({ ...verified, repeatabilityGrams: '0.06' });
    expect([worn.limitGrams.toFixed(), worn.decidedBy]).toEqual(['0.125', 'repeatability']);
  });

  it('changes where the class does: 500 e is still the first band', () => {
    const verified: Scale = {
      ...small,
      capacityGrams: 1000,
      readabilityGrams: '0.1',
      accuracyClass: 'III',
      verificationIntervalGrams: '0.1',
    };
    expect(limitOf(verified, '50').limitGrams.toFixed()).toBe('0.15');
    expect(limitOf(verified, '50.1').limitGrams.toFixed()).toBe('0.25');
  });

  it('counts what the weight itself may be off, and says when that is too much', () => {
    const third = limitOf({ ...small, repeatabilityGrams: '0.015' }, '100', '0.01');
    expect([third.limitGrams.toFixed(), third.isWeightRough]).toEqual(['0.04', false]);
    expect(limitOf({ ...small, repeatabilityGrams: '0.015' }, '100', '0.0101').isWeightRough).toBe(true);
  });

  it('is refused for a weight that the scale does not hold, and given for one that it just holds', () => {
    expect(findActionLimit(small, { weightGrams: '200.01', toleranceGrams: 0 }, scaleTables)).toMatchObject({
      problems: [{ code: 'check-weight-too-heavy', found: '200.01', allowed: '200' }],
    });
    expect(limitOf(small, '200').limitGrams.toFixed()).toBe('0.01');
  });
});

describe('a daily check', () => {
  it.each([
    ['100', true, '0'],
    ['100.01', true, '0.01'],
    ['99.99', true, '-0.01'],
    ['100.010001', false, '0.010001'],
    ['99.98', false, '-0.02'],
  ])('that reads %s for 100 g within 0.01 g: %s', (reading, isGood, deviation) => {
    const judged = judgeScaleCheck(reading, '100', '0.01');
    expect([judged.isGood, judged.deviationGrams.toFixed()]).toEqual([isGood, deviation]);
  });
});
