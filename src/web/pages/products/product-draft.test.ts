import { describe, expect, it } from 'vitest';
import { orders } from '../../../contract/index.ts';
import { draftOfProduct, EMPTY_PRODUCT, readProductDraft } from './product-draft.ts';

const filled = {
  ...EMPTY_PRODUCT,
  bestBeforeMonths: '12',
  name: 'Larch and lime balm 30 g',
  formulaId: 'f1',
  declaredGrams: '30',
  tinId: 't1',
  price: '7.5',
};

describe('a product as a draft', () => {
  it('is what the contract takes once it is filled in', () => {
    const read = readProductDraft(filled);
    expect(read.ok && orders.productDetails.safeParse(read.value).success).toBe(true);
  });

  it('comes back as it was when nothing was typed', () => {
    const read = readProductDraft(filled);
    if (!read.ok) throw new Error('expected a product');
    expect(readProductDraft(draftOfProduct(read.value))).toEqual(read);
  });

  it('takes the width of a round label for its height', () => {
    const faceMm = { shape: 'round' as const, width: '52.5', height: 'left over' };
    expect(readProductDraft({ ...filled, faceMm })).toMatchObject({
      value: { faceMm: { shape: 'round', width: 52.5, height: 52.5 } },
    });
  });

  it('keeps an empty aim as not said, so that the scale decides', () => {
    expect(readProductDraft(filled)).toMatchObject({ value: { aimGrams: null, openedMonths: null } });
  });

  it('names everything that is missing at once', () => {
    const read = readProductDraft({ ...EMPTY_PRODUCT, markets: [], bestBeforeMonths: '' });
    const where = read.ok ? [] : read.problems.map((problem) => problem.where.replace('details.', ''));
    expect(where).toEqual(['name', 'formulaId', 'declaredGrams', 'tinId', 'markets', 'bestBeforeMonths']);
  });
});
