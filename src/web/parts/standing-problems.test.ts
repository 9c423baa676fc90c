import { describe, expect, it } from 'vitest';
import { problem } from '../../core/problem.ts';
import { standingProblems } from './standing-problems.ts';

const FIELDS = new Set(['grossGrams', 'tareGrams', 'reason']);
const nought = problem('value-not-above', 'grossGrams', { found: '0', allowed: 0 });
const swapped = problem('tare-above-gross', 'tareGrams', { found: '48.2', allowed: '48.1' });
const noReason = problem('text-missing', 'reason');
const tooSmall = problem('lot-too-small', 'SB-1', { found: '107', allowed: '106.2' });
const left = (...changed: [string, string | null][]) =>
  standingProblems([nought, swapped, noReason, tooSmall], new Map(changed), FIELDS);

describe('problems that still stand', () => {
  it('are all of them as long as nothing is changed', () => {
    expect(left()).toEqual([nought, swapped, noReason, tooSmall]);
  });

  it('go with the field that they speak of, and with any field where they belong to none', () => {
    expect(left(['reason', ''])).toEqual([nought, swapped]);
  });

  it('go with the other figure that they quote', () => {
    expect(left(['grossGrams', '48.1'])).toEqual([noReason]);
    expect(left(['grossGrams', '12'])).toEqual([swapped, noReason]);
  });
});
