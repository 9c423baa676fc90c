import { describe, expect, it } from 'vitest';
import { findExposureMgPerKgDay } from './find-exposure.ts';

const sed = (relative: number, percent: number, absorption: number): string =>
  findExposureMgPerKgDay({
    relativeExposureMgPerKgDay: relative,
    percent,
    absorptionPercent: absorption,
  }).toFixed();

describe('the exposure to a substance', () => {
  it('is the product’s exposure times content times absorption', () => {
    expect(sed(123.2, 0.5, 20)).toBe('0.1232');
    expect(sed(24.14, 100, 100)).toBe('24.14');
  });

  it('is nothing where there is nothing in it, or nothing enters', () => {
    expect(sed(123.2, 0, 100)).toBe('0');
    expect(sed(123.2, 5, 0)).toBe('0');
  });

  it('is exact where a double is not', () => {
    expect(sed(0.1, 0.2, 0.3)).toBe('0.0000006');
    expect(sed(32.54, 0.0015, 0.1)).toBe('0.0000004881');
  });
});
