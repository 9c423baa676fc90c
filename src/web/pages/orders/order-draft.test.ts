import { describe, expect, it } from 'vitest';
import { type OrderDraft, readOrderDraft } from './order-draft.ts';

const draft = (change: Partial<OrderDraft> = {}): OrderDraft => ({
  customerId: null,
  placedOn: '2027-03-01',
  wantedBy: '2027-03-05',
  note: '',
  lines: [{ key: 'a', productId: 'p1', units: '4' }],
  ...change,
});
const whereOf = (order: OrderDraft): string[] => {
  const read = readOrderDraft(order);
  return read.ok ? [] : read.problems.map(({ code, where }) => `${code} ${where}`);
};

describe('readOrderDraft', () => {
  it('turns what was typed into an order', () => {
    expect(readOrderDraft(draft())).toEqual({
      ok: true,
      value: {
        customerId: null,
        placedOn: '2027-03-01',
        wantedBy: '2027-03-05',
        note: '',
        lines: [{ productId: 'p1', units: 4 }],
      },
    });
  });

  it('leaves out a line that nobody began', () => {
    const lines = [...draft().lines, { key: 'b', productId: '', units: '' }];
    expect(readOrderDraft(draft({ lines }))).toMatchObject({
      ok: true,
      value: { lines: [{ productId: 'p1' }] },
    });
  });

  it('names everything that is missing at once, each at its field', () => {
    const lines = [
      { key: 'a', productId: '', units: '2' },
      { key: 'b', productId: 'p1', units: '1.5' },
    ];
    expect(whereOf(draft({ wantedBy: '', lines }))).toEqual([
      'date-missing wantedBy',
      'choice-missing lines[0].productId',
      'not-a-whole-number lines[1].units',
    ]);
  });

  it('does not let an order without any line pass', () => {
    expect(whereOf(draft({ lines: [{ key: 'a', productId: '', units: '' }] }))).toEqual([
      'choice-missing lines[0].productId',
      'count-missing lines[0].units',
    ]);
  });

  it('names a line by its place on the page, also behind an empty one', () => {
    const lines = [
      { key: 'a', productId: '', units: '' },
      { key: 'b', productId: 'p1', units: 'two' },
    ];
    expect(whereOf(draft({ lines }))).toEqual(['not-a-whole-number lines[1].units']);
  });
});
