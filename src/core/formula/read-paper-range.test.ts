import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { type PaperRange, readPaperRange } from './read-paper-range.ts';

const read = (range: Partial<PaperRange>) =>
  readPaperRange({ leastPercent: null, typicalPercent: null, mostPercent: null, ...range }, 'here');
const valuesOf = (range: Partial<PaperRange>) => Object.values(must(read(range)));
const codeOf = (range: Partial<PaperRange>) => {
  const answer = read(range);
  return answer.ok ? null : answer.problems.map(({ code }) => code);
};

describe('a range as a paper prints it', () => {
  it('is taken as it stands where all three are given', () => {
    expect(valuesOf({ leastPercent: '20', typicalPercent: '30', mostPercent: '40' })).toEqual([
      '20',
      '30',
      '40',
    ]);
  });

  it('is the measured figure three times where there is one', () => {
    expect(valuesOf({ typicalPercent: '31.2' })).toEqual(['31.2', '31.2', '31.2']);
  });

  it('has its middle as typical between two ends', () => {
    expect(valuesOf({ leastPercent: '20', mostPercent: '41' })).toEqual(['20', '30.5', '41']);
  });

  it('starts at nought where only a most is printed', () => {
    expect(valuesOf({ mostPercent: '0.5' })).toEqual(['0', '0.25', '0.5']);
  });

  it('may start and end in one point', () => {
    expect(valuesOf({ leastPercent: '5', typicalPercent: '5', mostPercent: '5' })).toEqual(['5', '5', '5']);
  });

  it('is refused where its ends cross by the least bit', () => {
    expect(codeOf({ leastPercent: '40.01', mostPercent: '40' })).toEqual(['constituent-range-crossed']);
    expect(codeOf({ leastPercent: '20', typicalPercent: '41', mostPercent: '40' })).toEqual([
      'constituent-range-crossed',
    ]);
  });

  it('is refused where nobody says how much at the most', () => {
    expect(codeOf({ leastPercent: '20' })).toEqual(['constituent-without-most']);
    expect(codeOf({})).toEqual(['constituent-without-most']);
  });
});
