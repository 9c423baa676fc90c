import { describe, expect, it } from 'vitest';
import type { Scale } from '../workshop/workshop.ts';
import { judgeScaleFor } from './judge-scale-for.ts';

const scale = (capacityGrams: string, readabilityGrams: string, check: Scale['check'] = null): Scale => ({
  id: 'scale',
  name: 'Scale',
  capacityGrams,
  readabilityGrams,
  repeatabilityGrams: null,
  accuracyClass: null,
  verificationIntervalGrams: null,
  checkWeightGrams: null,
  checkToleranceGrams: null,
  repeatability: null,
  check,
  version: 1,
});
const band = (targetGrams: string, highGrams: string) => ({ targetGrams, highGrams, lowGrams: targetGrams });

describe('what a scale is good for in one weighing', () => {
  it('is good from the least on that it weighs within the band', () => {
    // 2 x 0.41 x 0.1 / 0.02 = 4.1 g.
    expect(judgeScaleFor(scale('2000', '0.1'), band('4.1', '4.182'))).toEqual({ is: 'good' });
    expect(judgeScaleFor(scale('2000', '0.1'), band('4', '4.08'))).toEqual({
      is: 'coarse',
      errorGrams: '0.1',
    });
  });

  it('is too coarse for a scent on a kitchen scale, with what that may be out by', () => {
    expect(judgeScaleFor(scale('5000', '1'), band('2', '2.1'))).toEqual({ is: 'coarse', errorGrams: '1' });
  });

  it('holds no more than it holds', () => {
    expect(judgeScaleFor(scale('200', '0.01'), band('200', '204'))).toEqual({ is: 'good' });
    expect(judgeScaleFor(scale('200', '0.01'), band('200.01', '204.01'))).toEqual({ is: 'too-small' });
  });

  it('weighs nothing where it failed its check', () => {
    const failed = { isHeld: true } as Scale['check'];
    expect(judgeScaleFor(scale('200', '0.01', failed), band('100', '102'))).toEqual({ is: 'held' });
  });
});
