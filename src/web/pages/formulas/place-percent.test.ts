import { describe, expect, it } from 'vitest';
import { placePercent } from './place-percent.ts';

const line = { roomLowPercent: '24', roomHighPercent: '26', leastPercent: '23', mostPercent: '25' };

describe('where a share stands in the picture', () => {
  it('is within the tenth at each side, whatever wanders out of its room', () => {
    expect(placePercent('23', line)).toBe(10);
    expect(placePercent('26', line)).toBe(90);
    expect(placePercent('24.5', line)).toBe(50);
  });

  it('is the middle where there is no room and nothing wandered', () => {
    const still = { roomLowPercent: '5', roomHighPercent: '5', leastPercent: '5', mostPercent: '5' };
    expect(placePercent('5', still)).toBe(50);
  });
});
