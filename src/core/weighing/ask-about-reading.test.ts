import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact } from '../quantity/index.ts';
import { askAboutReading, type Reading } from './ask-about-reading.ts';

const codeOf = (grams: string, rest: Omit<Reading, 'grams'> = {}) =>
  askAboutReading({ grams, ...rest })?.code;
const of520 = (grams: string, rest: Omit<Reading, 'grams'> = {}) =>
  askAboutReading({ grams, targetGrams: '520', ...rest });

describe('a reading is asked about', () => {
  it('not at all where it is near what is expected, or a plain pour too little or too much', () => {
    for (const grams of ['520', '519.8', '300', '260', '1040', '700']) expect(of520(grams)).toBeNull();
    expect(codeOf('12.3')).toBeUndefined();
  });

  it('where the point slipped, by ten, a hundred, a thousand, either way', () => {
    for (const grams of ['52', '5.2', '5200', '52100', '520000.5']) {
      expect(of520(grams)).toMatchObject({ code: expect.stringMatching(/ten-times|other-unit/) });
    }
    expect(of520('52')).toMatchObject({
      code: 'reading-ten-times',
      found: '52',
      allowed: '520',
      parameters: { gramsThen: '520' },
    });
    expect(of520('5200')?.code).toBe('reading-ten-times');
  });

  it.each([
    ['0.52', 'kg', '520'],
    ['18.34', 'oz', '519.93'],
    ['1.15', 'lb', '521.631'],
    ['2600', 'ct', '520'],
    ['8020', 'grain', '519.687'],
    ['16.72', 'ozt', '520.05'],
    ['520000', 'mg', '520'],
  ])('where %s looks like %s', (grams, unit, gramsThen) => {
    expect(of520(grams)).toMatchObject({ code: 'reading-other-unit', parameters: { unit, gramsThen } });
  });

  it('with the grams that the scale would show', () => {
    const scale = { readabilityGrams: '0.01', capacityGrams: '200' };
    // 3.55 oz of 28.349523125 g (NIST SP 811, appendix B.8).
    expect(askAboutReading({ grams: '3.55', targetGrams: '100.7', ...scale })?.parameters).toMatchObject({
      gramsThen: '100.64',
      unit: 'oz',
    });
  });

  it('where the point slipped beyond what the scale holds, before that is said', () => {
    const scale = { readabilityGrams: '0.01', capacityGrams: '200' };
    expect(askAboutReading({ grams: '1007', targetGrams: '100.7', ...scale })).toMatchObject({
      code: 'reading-ten-times',
      parameters: { gramsThen: '100.7' },
    });
  });

  it('just within a twentieth of a slip, and not beyond it', () => {
    expect(of520('54.6')?.code).toBe('reading-ten-times');
    expect(of520('54.61')).toBeNull();
    expect(of520('49.4')?.code).toBe('reading-ten-times');
    expect(of520('49.39')).toBeNull();
  });

  it('where the tub seems to stand in it, and not where the tub is lighter than a pour may miss', () => {
    expect(of520('605', { tareGrams: '85' })).toMatchObject({
      code: 'reading-tare-forgotten',
      parameters: { tareGrams: '85', netGrams: '520' },
    });
    expect(of520('540', { tareGrams: '85' })).toBeNull();
    expect(of520('520', { tareGrams: '3' })).toBeNull();
    expect(codeOf('42.1', { targetGrams: '30', tareGrams: '12' })).toBe('reading-tare-forgotten');
  });

  it('where it is negative, before anything else', () => {
    expect(codeOf('-3', { targetGrams: '30', readabilityGrams: '2', lastGrams: '-3' })).toBe(
      'reading-negative',
    );
    expect(codeOf('0')).toBeUndefined();
  });

  it('where the scale does not hold or show it, and not at its capacity or on a step', () => {
    expect(codeOf('200.01', { capacityGrams: '200' })).toBe('reading-above-capacity');
    expect(codeOf('200', { capacityGrams: '200' })).toBeUndefined();
    expect(codeOf('12.35', { readabilityGrams: '0.1' })).toBe('reading-not-a-step');
    expect(codeOf('12.3', { readabilityGrams: '0.1' })).toBeUndefined();
    expect(codeOf('12.5', { readabilityGrams: '0.5' })).toBeUndefined();
  });

  it('where it is the last one to the last digit', () => {
    expect(codeOf('35.20', { lastGrams: '35.2' })).toBe('reading-same-as-last');
    expect(codeOf('35.21', { lastGrams: '35.2' })).toBeUndefined();
  });
});

describe('properties of the questions', () => {
  const targets = fc.integer({ min: 1, max: 5_000_000 }).map((n) => exact(n).div(1000));

  it('a reading between half and twice the target is never a slip of the point or a unit', () => {
    fc.assert(
      fc.property(targets, fc.integer({ min: 500, max: 2000 }), (target, thousandths) => {
        expect(
          askAboutReading({ grams: target.times(thousandths).div(1000), targetGrams: target }),
        ).toBeNull();
      }),
    );
  });

  it('a target typed ten times off is always asked about', () => {
    fc.assert(
      fc.property(targets, fc.constantFrom('0.1', '0.01', '10', '100'), (target, times) => {
        expect(askAboutReading({ grams: target.times(times), targetGrams: target })).not.toBeNull();
      }),
    );
  });
});
