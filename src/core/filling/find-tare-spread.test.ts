import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { exact } from '../quantity/index.ts';
import { findOddTares, findTareSpread, isTareWide } from './find-tare-spread.ts';

const TEN = ['11.41', '11.38', '11.45', '11.40', '11.36', '11.43', '11.39', '11.42', '11.44', '11.37'];

describe('ten empty tins', () => {
  it('give their mean, their spread and how much heavier the next may be', () => {
    const spread = must(findTareSpread(TEN));
    expect(spread.meanGrams.toFixed()).toBe('11.405');
    // Squares about the mean sum to 0.00825, divided by 9.
    expect(spread.standardDeviationGrams.toNumber()).toBeCloseTo(Math.sqrt(0.00825 / 9), 12);
    // t(0.995, 9) = 3.2498 as tables of Student's distribution print it (from memory); times the root of 1 + 1/10.
    const printed = 3.2498 * Math.sqrt(1.1) * Math.sqrt(0.00825 / 9);
    expect(Math.abs(spread.allowanceGrams.toNumber() - printed)).toBeLessThan(0.000005);
  });

  it('of which all weigh the same allow nothing, and two suffice', () => {
    const spread = must(findTareSpread(['8.2', '8.2']));
    expect([spread.count, spread.allowanceGrams.toFixed()]).toEqual([2, '0']);
  });

  it('are wide above a quarter of the tolerable error, and not exactly there', () => {
    const spread = { ...must(findTareSpread(TEN)), standardDeviationGrams: exact('0.8') };
    expect(isTareWide(spread, '3.2')).toBe(false);
    expect(isTareWide({ ...spread, standardDeviationGrams: exact('0.800001') }, '3.2')).toBe(true);
    expect(isTareWide(spread, null)).toBeNull();
  });

  it('name the one that is of another kind, or misread', () => {
    expect(findOddTares([...TEN, '14.1'])).toEqual([10]);
    expect(findOddTares(['10', '10', '11'])).toEqual([2]);
    expect(findOddTares(['10', '10', '10.999999'])).toEqual([]);
    // Of two the heavier is asked about: nobody knows which of them is the odd one.
    expect(findOddTares(['10', '20'])).toEqual([1]);
    expect(findOddTares(['11', '10'])).toEqual([0]);
    expect(findOddTares(['10', '10.999999'])).toEqual([]);
    expect(findOddTares(['10'])).toEqual([]);
  });

  it('are refused where there are fewer than two, or one weighs nothing', () => {
    expect(findTareSpread(['11'])).toMatchObject({ ok: false, problems: [{ code: 'tares-too-few' }] });
    expect(findTareSpread(['11', '0'])).toMatchObject({
      ok: false,
      problems: [{ code: 'value-not-above', where: 'tares[1]' }],
    });
  });
});
