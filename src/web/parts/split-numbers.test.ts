import { describe, expect, it } from 'vitest';
import { splitNumbers } from './split-numbers.ts';

const numbersIn = (text: string): string[] =>
  splitNumbers(text)
    .filter(({ isNumber }) => isNumber)
    .map((part) => part.text);

describe('numbers within a text', () => {
  it('are parts of their own, with all that stands around them', () => {
    expect(splitNumbers('Trace of L-0002')).toEqual([
      { at: 0, text: 'Trace of ', isNumber: false },
      { at: 9, text: 'L-0002', isNumber: true },
    ]);
    expect(numbersIn('Fill from LB-0001, then LB-0001B or QB-12345')).toEqual([
      'LB-0001',
      'LB-0001B',
      'QB-12345',
    ]);
  });

  it('are not found in what only looks alike', () => {
    expect(numbersIn('12-0002, 8000-28-0, well-known, COSMO-0001, L-002, 2026-11-26')).toEqual([]);
  });

  it('leave a text without any as it is', () => {
    expect(splitNumbers('Can go out today.')).toEqual([
      { at: 0, text: 'Can go out today.', isNumber: false },
    ]);
    expect(splitNumbers('')).toEqual([]);
  });
});
