import { describe, expect, it } from 'vitest';
import { findCasFault } from '../../src/core/safety/index.ts';

describe('the check digit of a CAS number', () => {
  it('is 3 for 107-07-3, the worked example of the CAS Registry', () => {
    expect(findCasFault('107-07-3')).toBeUndefined();
  });

  it('is the only one of ten that fits', () => {
    const fits = Array.from({ length: 10 }, (_, digit) => `107-07-${digit}`).filter(
      (number) => findCasFault(number) === undefined,
    );
    expect(fits).toEqual(['107-07-3']);
  });

  it('holds for numbers of two and of seven digits in the first group (water 7732-18-5, formaldehyde 50-00-0)', () => {
    expect(['7732-18-5', '50-00-0', '5989-27-5'].map(findCasFault)).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  it('notices two neighbours changed about', () => {
    expect(findCasFault('5898-27-5')).toBe('check-digit');
  });

  it('says of anything else that it has not the shape', () => {
    expect(['', '1-07-3', '107-7-3', '12345678-07-3', '107-07', 'limonene'].map(findCasFault)).toEqual(
      Array.from({ length: 6 }, () => 'shape'),
    );
  });
});
