import { describe, expect, it } from 'vitest';
import { bandVerdict, handPercent, whyNotWeighed } from './weight-verdict.ts';

const band = { targetGrams: '3.36', lowGrams: '3.30', highGrams: '3.42' };

describe('the weight against its band', () => {
  it('counts both edges as inside and a hair beyond as out', () => {
    expect(['3.30', '3.42', '3.36'].map((typed) => bandVerdict(typed, band))).toEqual([
      'inside',
      'inside',
      'inside',
    ]);
    expect(bandVerdict('3.29', band)).toBe('low');
    expect(bandVerdict('3.43', band)).toBe('high');
  });

  it('says nothing of what is no number', () => {
    expect(bandVerdict('', band)).toBe('nothing');
    expect(bandVerdict('3,36', band)).toBe('nothing');
  });

  it('is no weight where a scale cannot show it, and that is told before anything is asked', () => {
    expect(bandVerdict('-3.36', band)).toBe('nothing');
    expect(bandVerdict('0', band)).toBe('nothing');
    expect(whyNotWeighed('-3.36')).toMatchObject({ code: 'value-not-above', found: '-3.36' });
    expect(whyNotWeighed('0')?.code).toBe('value-not-above');
    expect(whyNotWeighed('3,36')?.code).toBe('comma-for-point');
    expect(whyNotWeighed('0.01')).toBeUndefined();
  });

  it('draws the hand over the band, and never off the line', () => {
    expect(handPercent('3.36', band)).toBe(50);
    expect(handPercent('3.30', band)).toBe(40);
    expect(handPercent('0', band)).toBe(2);
    expect(handPercent('900', band)).toBe(98);
    expect(handPercent('5', { targetGrams: '5', lowGrams: '5', highGrams: '5' })).toBe(50);
  });
});
