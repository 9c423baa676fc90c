import { describe, expect, it } from 'vitest';
import { emptyGoods, readReceiveDraft } from './receive-draft.ts';

const goods = {
  ...emptyGoods('m1'),
  quantity: '1 000',
  supplierLot: 'B-77',
  bestBefore: '2028-05-31',
  paid: '14.20',
};

describe('readReceiveDraft', () => {
  it('takes goods in and accepts them', () => {
    expect(readReceiveDraft(goods, true)).toEqual({
      ok: true,
      value: {
        materialId: 'm1',
        supplierLot: 'B-77',
        bestBefore: '2028-05-31',
        quantity: '1000',
        paid: '14.2',
        supplier: '',
        accept: true,
        reason: '',
      },
    });
  });

  it('keeps what nobody knows as not known, never as an empty text or nought', () => {
    const read = readReceiveDraft({ ...emptyGoods('m1'), quantity: '5' }, true);
    expect(read).toMatchObject({ ok: true, value: { supplierLot: null, bestBefore: null, paid: null } });
  });

  it('asks for the reason of a hold', () => {
    expect(readReceiveDraft(goods, false)).toMatchObject({
      ok: false,
      problems: [{ code: 'text-missing', where: 'reason' }],
    });
    expect(readReceiveDraft({ ...goods, reason: 'seal was open' }, false)).toMatchObject({ ok: true });
  });

  it('names everything that is missing at once', () => {
    const read = readReceiveDraft(emptyGoods(null), true);
    expect(read).toMatchObject({ problems: [{ where: 'materialId' }, { where: 'quantity' }] });
  });
});
