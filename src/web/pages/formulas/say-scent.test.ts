import { describe, expect, it } from 'vitest';
import type { FoundScent } from '../../../check/index.ts';
import { done } from '../../../core/problem.ts';
import { exact } from '../../../core/quantity/index.ts';
import type { ScentLimit } from '../../../core/safety/index.ts';
import { nameOfBound, sayCloseness, sayPercents, sayRelief, sayScent } from './say-scent.ts';
import { firstScent } from './scent-draft.ts';

const ofReport = { kind: 'assessor', source: 'R-1', citation: 'R-1' } as const;
const limit = (name: string, shareOfLimit: number, leastPercent?: string): ScentLimit => ({
  name,
  told: ofReport,
  amount: 1,
  most: 1,
  shareOfLimit,
  leastPercent,
});
const orange = limit('Orange oil', 1);
const cedar = limit('Cedar oil', 1);
const shea = limit('Shea butter', 0.125, '38');
const found: FoundScent = {
  verdict: 'found',
  percent: exact('1.666666666666'),
  shares: [0.6, 0.4],
  percents: [exact('1'), exact('0.666666666666')],
  decidedBy: orange,
  relief: { percent: exact('13.333333333333'), decidedBy: shea },
  limits: [orange, cedar, shea],
  unknown: [],
  notInReport: [],
};
const line = { stage: '', itemKind: 'material', itemId: '1', itemName: '', grams: '1', percent: '' } as const;
const draft = firstScent([line], () => true);
const view = { oils: [], batchGrams: undefined, check: undefined, scale: undefined, leastGrams: null };
const sentence = (part: Partial<FoundScent>) =>
  sayScent(done({ ...view, found: { ...found, ...part } }), draft);

describe('the scent in words', () => {
  it('names what decides, and what is at its limit as well', () => {
    expect(sentence({})).toContain('Orange oil decides');
    expect(sentence({})).toMatch(/too: Cedar oil\.$/);
    expect(sentence({ limits: [orange, shea] })).not.toContain('too:');
  });

  it('says of a least what gives way, and never that it is so much of what it may be', () => {
    const said = sayCloseness(shea, exact('1.666666666666'));
    expect(said).toContain('less Shea butter');
    // 1.666 / 0.125, rounded down.
    expect(said).toContain('13.333 %');
    expect(said).toContain('38 %');
    expect(said).not.toContain('of what it may be');
    expect(sentence({ decidedBy: shea })).toContain('Shea butter would fall under the 38 %');
  });

  it('says without whose limit it would be more', () => {
    expect(sayRelief(found)).toMatch(/^Without the limit on Orange oil .* Shea butter would fall under/);
  });

  it('calls a maximum of one’s own by words', () => {
    expect(nameOfBound(limit('mostPercent', 1))).toBe('your own maximum');
    expect(sentence({ verdict: 'over-without', limits: [limit('mostPercent', 1)] })).not.toContain(
      'mostPercent',
    );
  });

  it('gives every percent of one table the same places, rounded down', () => {
    expect(sayPercents(found.percents)).toEqual(['1.000', '0.666']);
    expect(sayPercents([exact('1.5'), exact('0.00012345')])).toEqual(['1.500000', '0.000123']);
    expect(sayPercents([exact(0)])).toEqual(['0']);
  });
});
