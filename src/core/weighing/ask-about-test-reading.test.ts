import { describe, expect, it } from 'vitest';
import { askAboutTestReading } from './ask-about-test-reading.ts';

const codeOf = (grams: string, earlier: readonly string[] = []) =>
  askAboutTestReading({ grams, weightGrams: '100', readabilityGrams: '0.01', capacityGrams: '200', earlier })
    ?.code;

describe('a reading of a test', () => {
  it('is taken where it is near the others', () => {
    expect(codeOf('100.02')).toBeUndefined();
    expect(codeOf('103.1', ['103.12', '103.11'])).toBeUndefined();
  });

  it('is asked about where the scale seems not to have stood at nought: beyond 0.5 % of it', () => {
    expect(codeOf('103')).toBe('reading-not-zeroed');
    expect(codeOf('100.5')).toBeUndefined();
    expect(codeOf('100.51')).toBe('reading-not-zeroed');
    expect(codeOf('100', ['103.12', '103.11', '103.12'])).toBe('reading-not-zeroed');
  });

  it('takes the middle of the readings before it: one that was let through does not move it', () => {
    expect(codeOf('100.01', ['100', '150', '100.02'])).toBeUndefined();
  });

  it('is asked about where the point slipped, where it is ounces, no step, or above capacity', () => {
    expect(codeOf('10.00')).toBe('reading-ten-times');
    expect(codeOf('3.53')).toBe('reading-other-unit');
    expect(codeOf('100.005')).toBe('reading-not-a-step');
    expect(codeOf('200.01')).toBe('reading-above-capacity');
    expect(codeOf('-0.01')).toBe('reading-negative');
  });
});
