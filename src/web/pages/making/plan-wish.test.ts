import { describe, expect, it } from 'vitest';
import { batchWish, type PlanWish, wishFor } from './plan-wish.ts';

type Formulas = Parameters<typeof batchWish>[1];
const formulas = [{ id: 'f', kind: 'mixture', latest: { id: 'r' } }] as unknown as Formulas;
const wish: PlanWish = {
  formulaId: 'f',
  by: 'tins',
  grams: '',
  units: { p: '5' },
  keepsSample: true,
  sampleGrams: '10',
  declineWhy: '',
  purpose: 'sale',
  markets: ['GB'],
};

describe('batch wish', () => {
  it('asks for tins and the sample', () => {
    expect(batchWish(wish, formulas)).toEqual({
      revisionId: 'r',
      purpose: 'sale',
      markets: ['GB'],
      size: { by: 'tins', tins: [{ productId: 'p', units: 5 }], retained: { keep: true, grams: '10' } },
    });
  });

  it('carries the reason where no sample is kept', () => {
    expect(
      batchWish({ ...wish, keepsSample: false, declineWhy: 'Only five tins' }, formulas)?.size,
    ).toMatchObject({
      retained: { keep: false, reason: 'Only five tins' },
    });
  });

  it('asks nothing while no count, no grams or no market is typed', () => {
    expect(batchWish({ ...wish, units: { p: '' } }, formulas)).toBeUndefined();
    expect(batchWish({ ...wish, units: { p: '0' } }, formulas)).toBeUndefined();
    expect(batchWish({ ...wish, by: 'grams', grams: '1,5' }, formulas)).toBeUndefined();
    expect(batchWish({ ...wish, markets: [] }, formulas)).toBeUndefined();
  });
});

describe('a fresh wish', () => {
  it('asks for every market that its products are sold in, a base for those of what it goes into', () => {
    const base = { id: 'b', kind: 'base', latest: { id: 'rb', lines: [] } };
    const lines = [{ itemKind: 'formula', itemId: 'b' }];
    const mixture = { id: 'f', kind: 'mixture', latest: { id: 'r', lines } };
    const all = [base, mixture] as unknown as Formulas;
    const product = (id: string, markets: string[], isWithdrawn = false) => ({
      id,
      details: { formulaId: 'f', retainedGrams: '0', markets, isWithdrawn },
    });
    const products = [product('p', ['GB']), product('q', ['GB', 'NI']), product('old', ['EU'], true)];
    const sold = products as unknown as Parameters<typeof wishFor>[2];
    expect(wishFor('f', all, sold).markets).toEqual(['GB', 'NI']);
    expect(wishFor('b', all, sold).markets).toEqual(['GB', 'NI']);
    expect(wishFor('b', all, []).markets).toEqual(['GB']);
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
