import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { exact } from '../quantity/index.ts';
import type { FormulaLine } from './formula-line.ts';
import { percentFromGrams } from './percent-from-grams.ts';

const line = (key: string, grams: string): FormulaLine => ({
  key,
  stage: 'melt',
  item: { kind: 'material', id: key },
  grams,
});
const lines = (...grams: string[]) => grams.map((each, index) => line(String(index), each));
const codesOf = (given: FormulaLine[]) => {
  const result = percentFromGrams(given);
  return result.ok ? [] : result.problems.map(({ code, where }) => `${code} ${where}`);
};

describe('percent from grams', () => {
  it('gives each line its share of the total', () => {
    const { lines: rows, totalGrams } = must(percentFromGrams(lines('450', '45', '5')));
    expect(rows.map(({ percent }) => percent.toFixed())).toEqual(['90', '9', '1']);
    expect(rows.map(({ shownPercent }) => shownPercent)).toEqual(['90', '9', '1']);
    expect(totalGrams.toFixed()).toBe('500');
  });

  it('shows the same share as the same number, rounded from the exact one', () => {
    const thirds = must(percentFromGrams(lines('100', '100', '100'))).lines;
    expect(thirds.map(({ shownPercent }) => shownPercent)).toEqual(['33.333', '33.333', '33.333']);
    // 12 / 1003 is 1.19641... %.
    const { lines: rows } = must(percentFromGrams(lines('991', '12')));
    expect(rows.map(({ shownPercent }) => shownPercent)).toEqual(['98.804', '1.196']);
  });

  it('keeps a share exact where it has an end, however it came about', () => {
    const { lines: rows, micrograms, total } = must(percentFromGrams(lines('0.003', '0.297')));
    expect(rows[0]?.percent.toFixed()).toBe('1');
    expect([micrograms[0], total]).toEqual([3000n, 300000n]);
  });

  it('takes more places before a line would show as nought', () => {
    const { lines: rows } = must(percentFromGrams(lines('0.002', '999.998')));
    expect(rows.map(({ shownPercent }) => shownPercent)).toEqual(['0.0002', '99.9998']);
  });

  it('shows each share within half of its last place, and adds up to the total as kept, whatever is typed', () => {
    const grams = fc.integer({ min: 1, max: 1_000_000_000 }).map((micro) => exact(micro).div(1e6).toFixed());
    fc.assert(
      fc.property(fc.array(grams, { minLength: 1, maxLength: 40 }), (typed) => {
        const { lines: rows, micrograms, total } = must(percentFromGrams(lines(...typed)));
        for (const { percent, shownPercent } of rows)
          expect(percent.minus(shownPercent).abs().lte('0.0005')).toBe(true);
        expect(micrograms.reduce((sum, each) => sum + each, 0n)).toBe(total);
      }),
    );
  });

  it('does not change when a line is split in two', () => {
    const whole = must(percentFromGrams(lines('60', '40')));
    const split = must(percentFromGrams(lines('25.5', '34.5', '40')));
    const [first, second] = split.lines;
    expect(
      exact(first?.percent ?? 0)
        .plus(second?.percent ?? 0)
        .toFixed(),
    ).toBe(whole.lines[0]?.percent.toFixed());
  });

  it('names each line whose mass cannot stand', () => {
    expect(codesOf([])).toEqual(['formula-without-lines lines']);
    expect(codesOf(lines('1', '0', '-2', '', '1,5'))).toEqual([
      'mass-zero lines[1].grams',
      'mass-negative lines[2].grams',
      'number-missing lines[3].grams',
      'comma-for-point lines[4].grams',
    ]);
    expect(codesOf(lines('0.0000001'))).toEqual(['mass-too-fine lines[0].grams']);
  });

  it('refuses more than a tonne, in one line or in all', () => {
    expect(codesOf(lines('1000000'))).toEqual([]);
    expect(codesOf(lines('1000000.000001'))).toEqual(['mass-absurd lines[0].grams']);
    expect(codesOf(lines('600000', '600000'))).toEqual(['mass-absurd lines']);
  });
});
