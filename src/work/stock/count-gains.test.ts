import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildMakingBench, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { buildIngredient, buildLot, buildPackaging } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';

let bench: TestWorkshop;
let fat: string;

/** A kilogram of a fat came in; the one scale shows tenths of a gram, so that a weighing is off by 0.1 g at most. */
beforeEach(async () => {
  bench = await openTestWorkshop();
  const scale = {
    name: 'Tub scale',
    capacityGrams: '20000',
    readabilityGrams: '0.1',
    repeatabilityGrams: null,
    accuracyClass: null,
    verificationIntervalGrams: null,
  };
  await bench.get('saveScale', { body: { scale } });
  fat = await buildLot(bench, await buildIngredient(bench), { quantity: '1000' });
});
afterEach(() => bench.close());

const weigh = (id: string, grossGrams: string, isGainSure = false) =>
  bench.ask('countLot', {
    params: { id },
    body: { grossGrams, tareGrams: '0', reason: 'Weighed', isGainSure },
  });
const lotOf = async (id: string) => (await bench.get('getLot', { params: { id } })).lot;
const correct = async (id: string, quantity: string, reason = 'A nought was missing') => {
  const { version, supplierLot, bestBefore, paid } = await lotOf(id);
  const body = { version, supplierLot, bestBefore, paid, quantity, reason };
  return bench.ask('correctLot', { params: { id }, body });
};

describe('a count above the ledger', () => {
  it('is asked about once, and booked by the answer', async () => {
    await weigh(fat, '400');
    expect(await weigh(fat, '700')).toMatchObject({
      ok: false,
      problems: [{ code: 'count-gains', found: '700', allowed: '400', parameters: { gain: '300' } }],
    });
    expect((await lotOf(fat)).onHand).toBe('400');
    expect(await weigh(fat, '700', true)).toMatchObject({
      ok: true,
      value: { difference: '300', onHand: '700' },
    });
  });

  it('is not asked about within the error of the scale', async () => {
    await weigh(fat, '400');
    expect(codesOf(await weigh(fat, '400.1'))).toEqual([]);
    expect(codesOf(await weigh(fat, '400.200001'))).toEqual(['count-gains']);
  });

  it('is refused where more would be there than ever came in, whatever is answered', async () => {
    expect(await weigh(fat, '7800', true)).toMatchObject({
      ok: false,
      problems: [{ code: 'count-above-came-in', where: 'L-0001', found: '7800', allowed: '1000' }],
    });
    expect(codesOf(await weigh(fat, '1000.1'))).toEqual([]);
    expect(codesOf(await weigh(fat, '1000.100001', true))).toEqual(['count-above-came-in']);
  });

  it('counts what stands elsewhere of the lot along', async () => {
    const stall = (await bench.get('savePlace', { body: { name: 'Back room', kind: 'stall' } })).id;
    await bench.get('moveLot', {
      params: { id: fat },
      body: { kind: 'moved', quantity: '300', toPlaceId: stall, reason: '' },
    });
    const body = { grossGrams: '900', tareGrams: '0', reason: 'Weighed', isGainSure: true };
    const counted = await bench.ask('countLot', {
      params: { id: fat },
      body: { ...body, placeId: bench.places.shelf },
    });
    expect(counted).toMatchObject({
      ok: false,
      problems: [{ code: 'count-above-came-in', found: '1200', allowed: '1000' }],
    });
  });

  it('of pieces has no error to spare', async () => {
    const lids = await buildLot(bench, await buildPackaging(bench), { quantity: '100' });
    const count = (pieces: number, isGainSure = false) =>
      bench.ask('countLot', { params: { id: lids }, body: { pieces, reason: 'Counted', isGainSure } });
    await count(60);
    expect(codesOf(await count(61))).toEqual(['count-gains']);
    expect(codesOf(await count(61, true))).toEqual([]);
    expect(codesOf(await count(101, true))).toEqual(['count-above-came-in']);
  });

  it('of what was made here goes up to what was weighed in, not only to the yield', async () => {
    const shop = await buildMakingBench(bench);
    const base = await makeFirmBase(bench, shop, '400');
    expect((await lotOf(base)).onHand).toBe('399');
    expect(codesOf(await weigh(base, '399.9', true))).toEqual([]);
    expect(codesOf(await weigh(base, '420', true))).toEqual(['count-above-came-in']);
  });
});

describe('a receipt that was written wrong', () => {
  it('is corrected with a reason: the difference is booked as received, and the count then fits', async () => {
    expect(codesOf(await correct(fat, '10000'))).toEqual([]);
    const { lot, movements } = await bench.get('getLot', { params: { id: fat } });
    expect(lot).toMatchObject({ onHand: '10000', paidFor: '10000' });
    expect(movements[0]).toMatchObject({ kind: 'received', change: '9000', reason: 'A nought was missing' });
    expect(codesOf(await weigh(fat, '7800'))).toEqual([]);
    const balance = (await bench.get('traceLot', { params: { id: fat } })).balance;
    expect(balance).toMatchObject({ receivedGrams: '10000', unexplainedGrams: '2200' });
  });

  it('stays where no quantity is given, or the same', async () => {
    const { version, supplierLot, bestBefore, paid } = await lotOf(fat);
    const body = { version, supplierLot, bestBefore, paid, reason: 'Date misread' };
    expect(codesOf(await bench.ask('correctLot', { params: { id: fat }, body }))).toEqual([]);
    expect(codesOf(await correct(fat, '1000'))).toEqual([]);
    expect((await bench.get('getLot', { params: { id: fat } })).movements).toHaveLength(1);
  });

  it('is not less than what has gone out already', async () => {
    await weigh(fat, '400');
    expect(await correct(fat, '599.999999')).toMatchObject({
      ok: false,
      problems: [{ code: 'receipt-below-gone', found: '599.999999', allowed: '600' }],
    });
    expect(codesOf(await correct(fat, '600'))).toEqual([]);
    expect((await lotOf(fat)).onHand).toBe('0');
  });

  it('is not there for what was made here', async () => {
    const shop = await buildMakingBench(bench);
    const base = await makeFirmBase(bench, shop, '400');
    expect(codesOf(await correct(base, '500'))).toEqual(['lot-not-bought']);
  });
});
