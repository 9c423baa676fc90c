import { describe, expect, it } from 'vitest';
import { boundSafetyTables } from '../../catalogue/index.ts';
import { fractionOf } from '../linear/index.ts';
import { must } from '../problem.ts';
import { exact } from '../quantity/index.ts';
import { findScentInProduct, judgeLimits, type PartContents, type ScentInProduct } from './index.ts';

const tables = boundSafetyTables();
const context = { market: 'EU', use: 'leave-on', category: '5A', date: '2026-11-26' } as const;
const body = { context, about: 'body' };
const face = { context: { ...context, category: '5B' }, about: 'face' };

const clove: PartContents = [
  { name: 'Clove bud oil', percent: 100 },
  { name: 'eugenol', origin: 'natural', percent: 88 },
];
const spearmint: PartContents = [
  { name: 'Spearmint oil', percent: 100 },
  { name: 'carvone', origin: 'natural', percent: 80 },
];
const base: PartContents = [{ name: 'Shea butter', percent: 100 }];
const spicedBase: PartContents = [...base, { name: 'eugenol', origin: 'natural', percent: '0.1' }];

const find = (more: Partial<ScentInProduct> = {}) =>
  must(
    findScentInProduct(tables, {
      places: [body],
      parts: [clove, base],
      shares: [1],
      ownBounds: [],
      ...more,
    }),
  );

/** The whole product with so much of the oil, by the calculation of limits. */
const isOver = (rest: PartContents, percent: string): boolean =>
  judgeLimits(tables, {
    ...context,
    contributions: [
      ...clove.map((one) => ({ ...one, percent: exact(String(one.percent)).times(percent).div(100) })),
      ...rest.map((one) => ({
        ...one,
        percent: exact(String(one.percent)).times(exact(100).minus(percent)).div(100),
      })),
    ],
  }).verdicts.some(({ verdict }) => verdict === 'over');

describe('the largest scent of a formula', () => {
  it('counts what the rest holds already, of which there is less the more scent there is', () => {
    // (0.88 - 0.001) x <= 0.64 - 0.1
    const { percent, decidedBy } = find({ parts: [clove, spicedBase] });
    expect(percent?.toFixed(6)).toBe('0.614334');
    expect(decidedBy).toMatchObject({ name: 'eugenol', about: ['body'] });
    expect(isOver(spicedBase, percent?.toFixed() ?? '')).toBe(false);
    expect(isOver(spicedBase, percent?.plus('0.0000001').toFixed() ?? '')).toBe(true);
  });

  it('is that of the strictest use, which is named', () => {
    const parts = [spearmint, base];
    const both = find({ parts, places: [body, face] });
    expect(both.decidedBy).toMatchObject({ name: 'carvone', about: ['face'] });
    expect(both.percent?.toFixed()).toBe('0.04875');
    expect(find({ parts }).percent?.toFixed()).toBe('0.25');
  });

  it('names every place that a limit holds in', () => {
    const other = { context, about: 'Northern Ireland' };
    expect(find({ places: [body, other] }).decidedBy?.about).toEqual(['body', 'Northern Ireland']);
  });

  it('says of what is over with no scent in it that it is', () => {
    const rest: PartContents = [{ name: 'eugenol', origin: 'natural', percent: 1 }];
    const answer = find({ parts: [clove, rest] });
    expect(answer).toMatchObject({ verdict: 'over-without', percent: undefined });
    expect(answer.limits.map(({ name }) => name)).toContain('eugenol');
  });

  it('leaves room for the worst weighing of each oil and of the whole', () => {
    // 0.88 (x + 0.01) <= 0.64 (1 - 0.001)
    const safe = find({ errors: { morePercent: ['0.01'], lessFraction: '0.001' } });
    expect(safe.percent?.toFixed(6)).toBe(exact('0.63936').div('0.88').minus('0.01').toFixed(6, 1));
    const worst = (safe.percent ?? exact(0)).plus('0.01').div(exact(1).minus('0.001'));
    expect(worst.times('0.88').lte('0.64')).toBe(true);
    expect(worst.times('0.88').gt('0.6399999999')).toBe(true);
  });

  it('holds to the report of a material that stands in oil and rest alike', () => {
    const report = {
      name: 'Vitamin E',
      told: { kind: 'assessor' },
      weights: [fractionOf('0.5'), fractionOf('0.001')],
      most: fractionOf('0.2'),
    } as const;
    // (0.5 - 0.001) x <= 0.2 - 0.1
    expect(find({ ownBounds: [report] }).percent?.toFixed(6)).toBe('0.200401');
  });
});
