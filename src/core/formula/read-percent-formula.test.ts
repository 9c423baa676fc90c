import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { type PercentEntry, readPercentFormula } from './read-percent-formula.ts';

const entries = (...percents: (string | null)[]): PercentEntry[] =>
  percents.map((percent, index) => ({
    key: String(index),
    stage: 'melt',
    item: { kind: 'material', id: String(index) },
    percent,
  }));
const gramsOf = (given: PercentEntry[]) => must(readPercentFormula(given)).map(({ grams }) => grams);
const problemsOf = (given: PercentEntry[]) => {
  const result = readPercentFormula(given);
  return result.ok ? [] : result.problems;
};

describe('a formula typed in percent', () => {
  it('becomes the grams of a hundred', () => {
    expect(gramsOf(entries('62.5', '37', '0.5'))).toEqual(['62.5', '37', '0.5']);
  });

  it('lets one line take the rest', () => {
    expect(gramsOf(entries(null, '37', '0.55'))).toEqual(['62.45', '37', '0.55']);
  });

  it('says by how much it misses 100', () => {
    expect(problemsOf(entries('62.5', '37'))).toMatchObject([
      { code: 'percent-sum-not-hundred', found: '99.5', parameters: { difference: '0.5', isOver: false } },
    ]);
    expect(problemsOf(entries('62.5', '37.50000001'))).toMatchObject([
      { code: 'percent-sum-not-hundred', parameters: { difference: '0.00000001', isOver: true } },
    ]);
  });

  it('refuses a rest of nought or less, and two rests', () => {
    expect(problemsOf(entries('63', '37', null))).toMatchObject([
      { code: 'percent-leaves-no-rest', parameters: { difference: '0' } },
    ]);
    expect(problemsOf(entries('64', '37', null))).toMatchObject([
      { code: 'percent-leaves-no-rest', parameters: { difference: '1' } },
    ]);
    expect(problemsOf(entries('64', null, null))).toMatchObject([{ code: 'percent-two-rests', found: 2 }]);
  });

  it('names each percentage that cannot stand', () => {
    expect(problemsOf(entries('0', '101', 'x', '-1')).map(({ code, where }) => `${code} ${where}`)).toEqual([
      'percent-out-of-range lines[0].percent',
      'percent-out-of-range lines[1].percent',
      'not-a-number lines[2].percent',
      'percent-out-of-range lines[3].percent',
    ]);
    expect(problemsOf([])).toMatchObject([{ code: 'formula-without-lines' }]);
  });
});
