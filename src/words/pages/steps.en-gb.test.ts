import { describe, expect, it } from 'vitest';
import { stepWords } from './steps.en-gb.ts';

describe('the hours that something sets', () => {
  it('are one hour or several', () => {
    expect(stepWords.set.hours('1', '2.5')).toBe('Firm after 1 hour at the earliest, 2.5 at the latest.');
    expect(stepWords.set.hours('0.5', '1')).toBe('Firm after 0.5 hours at the earliest, 1 at the latest.');
  });
});
