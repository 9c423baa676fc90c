import { describe, expect, it } from 'vitest';
import type { Run } from '../filling/run.ts';
import { copiesWanted, readCopies } from './copies.ts';

const run = (units: number | null, counting: number) =>
  ({ closing: units === null ? null : { units }, summary: { counting }, wanted: 5 }) as unknown as Run;
const codes = (typed: string) => {
  const read = readCopies(typed);
  return read.ok ? read.value : read.problems.map(({ code, where }) => `${code} ${where}`);
};

describe('labels to print', () => {
  it('are those of the tins that have none yet', () => {
    expect(copiesWanted(run(7, 7), 0)).toBe(7);
    expect(copiesWanted(run(7, 7), 5)).toBe(2);
    expect(copiesWanted(run(7, 7), 7)).toBe(1);
    expect(copiesWanted(run(null, 2), 0)).toBe(5);
  });

  it('are some more where spare ones are wished for, and not more than can be printed at once', () => {
    expect(copiesWanted(run(7, 7), 0, 2)).toBe(9);
    expect(copiesWanted(run(7, 7), 7, 2)).toBe(1);
    expect(copiesWanted(run(199, 7), 0, 2)).toBe(200);
  });

  it('are a whole number from 1 to 200; anything else is said and not swallowed', () => {
    expect([codes('1'), codes('200')]).toEqual([1, 200]);
    expect(codes('0')).toEqual(['count-below-least copies']);
    expect(codes('201')).toEqual(['copies-wrong copies']);
    expect(codes('100000')).toEqual(['copies-wrong copies']);
    expect(codes('-1')).toEqual(['count-negative copies']);
    expect(codes('2,5')).not.toEqual([]);
    expect(codes('')).not.toEqual([]);
  });
});
