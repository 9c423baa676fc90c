import { describe, expect, it } from 'vitest';
import { batchWish, makeLess, marketsOf, type PlanWish, wishFor } from './plan-wish.ts';

type Formulas = Parameters<typeof batchWish>[1];
const formulas = [
  { id: 'f', kind: 'mixture', inForceId: 'r', soldIn: ['GB', 'NI'], latest: { id: 't' } },
] as unknown as Formulas;
const products = [
  { id: 'p', details: { formulaId: 'f', markets: ['GB'] } },
  { id: 'q', details: { formulaId: 'f', markets: ['GB', 'US'] } },
] as unknown as Parameters<typeof batchWish>[2];
const wish: PlanWish = {
  formulaId: 'f',
  by: 'tins',
  grams: '',
  units: { p: '5' },
  keepsSample: true,
  sampleGrams: '10',
  declineWhy: '',
  lossPercent: '',
  purpose: 'sale',
  markets: ['GB'],
};

describe('as much as there is', () => {
  const plan = {
    batchGrams: '2445.4',
    tins: [
      { productId: 'p', wanted: 20, possible: 19 },
      { productId: 'q', wanted: 3, possible: 0 },
    ],
  } as unknown as Parameters<typeof makeLess>[1];

  it('is the tins that are possible of each product, or the grams', () => {
    expect(makeLess({ ...wish, units: { p: '20', q: '3' } }, plan).units).toEqual({ p: '19', q: '0' });
    expect(makeLess({ ...wish, by: 'grams', grams: '15000' }, plan).grams).toBe('2445.4');
  });

  it('leaves the rest of the wish as it was', () => {
    expect(makeLess(wish, plan)).toMatchObject({ sampleGrams: '10', markets: ['GB'], purpose: 'sale' });
  });
});

describe('batch wish', () => {
  it('asks for tins and the sample', () => {
    expect(batchWish(wish, formulas, products)).toEqual({
      revisionId: 'r',
      purpose: 'sale',
      markets: ['GB'],
      size: {
        by: 'tins',
        tins: [{ productId: 'p', units: 5 }],
        retained: { keep: true, grams: '10' },
        lossPercent: null,
      },
    });
  });

  it('is by the revision in force for sale, and by what was written last as a trial', () => {
    expect(batchWish(wish, formulas, products)?.revisionId).toBe('r');
    expect(batchWish({ ...wish, purpose: 'trial' }, formulas, products)?.revisionId).toBe('t');
  });

  it('carries the reason where no sample is kept', () => {
    expect(
      batchWish({ ...wish, keepsSample: false, declineWhy: 'Only five tins' }, formulas, products)?.size,
    ).toMatchObject({
      retained: { keep: false, reason: 'Only five tins' },
    });
  });

  it('asks nothing while no count, no grams or no market is typed', () => {
    expect(batchWish({ ...wish, units: { p: '' } }, formulas, products)).toBeUndefined();
    expect(batchWish({ ...wish, units: { p: '0' } }, formulas, products)).toBeUndefined();
    expect(batchWish({ ...wish, by: 'grams', grams: '1,5' }, formulas, products)).toBeUndefined();
    expect(batchWish({ ...wish, markets: [] }, formulas, products)).toBeUndefined();
  });
});

describe('a fresh wish', () => {
  it('asks for the markets of the tins that are asked for, and of the formula where none is', () => {
    const fresh = { ...wishFor('f', formulas, products), by: 'tins' as const };
    const marketsWith = (units: PlanWish['units']) => marketsOf({ ...fresh, units }, formulas, products);
    expect(marketsWith({})).toEqual(['GB', 'NI']);
    expect(marketsWith({ p: '2' })).toEqual(['GB']);
    expect(marketsWith({ p: '2', q: '1' })).toEqual(['GB', 'US']);
    expect(marketsOf({ ...fresh, by: 'grams', units: { p: '2' } }, formulas, products)).toEqual(['GB', 'NI']);
    expect(marketsOf({ ...fresh, units: { p: '2' }, markets: ['NI'] }, formulas, products)).toEqual(['NI']);
  });

  const productWith = (retainedGrams: string) =>
    [
      { id: 'p', details: { formulaId: 'f', retainedGrams, markets: ['GB'], isWithdrawn: false } },
    ] as unknown as Parameters<typeof wishFor>[2];

  it('keeps the sample that the product asks for', () => {
    expect(wishFor('f', formulas, productWith('12.5'))).toMatchObject({
      keepsSample: true,
      sampleGrams: '12.5',
    });
  });

  it('asks why where the product keeps none, and not for nought grams', () => {
    expect(wishFor('f', formulas, productWith('0'))).toMatchObject({ keepsSample: false, sampleGrams: '' });
  });
});
