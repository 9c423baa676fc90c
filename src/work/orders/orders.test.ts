import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildMakingBench, type MakingBench, makeFirmBase } from '../../../test/workshop/build-making.ts';
import {
  answerOf,
  buildOrder,
  buildTins,
  fillTins,
  nameWorkshop,
} from '../../../test/workshop/build-order.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { countQueries } from '../../../test/workshop/count-queries.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { countEntries } from '../../../test/workshop/small-file.ts';

let bench: TestWorkshop;
let shop: MakingBench;

beforeEach(async () => {
  bench = await openTestWorkshop();
  shop = await buildMakingBench(bench);
  await nameWorkshop(bench);
});
afterEach(() => bench.close());

const order = (units: number, wantedBy?: string) =>
  buildOrder(bench, shop.product, units, wantedBy ? { wantedBy } : {});
const tins = async (units: number) => {
  await makeFirmBase(bench, shop, '300');
  return buildTins(bench, shop, units);
};
const reserve = (id: string) => bench.ask('reserveOrder', { params: { id }, body: {} });
const dispatch = (id: string, body: Parameters<typeof bench.ask<'dispatchOrder'>>[1] = { body: {} }) =>
  bench.ask('dispatchOrder', { ...body, params: { id } });
const onHand = async (id: string) => (await bench.get('getLot', { params: { id } })).lot.onHand;
const linesOf = async (id: string) => (await bench.get('getOrder', { params: { id } })).lines;

describe('keeping tins for an order', () => {
  it('keeps released tins, and no more than are wanted', async () => {
    const lot = await tins(5);
    const id = await order(3);
    expect(await reserve(id)).toMatchObject({ value: { lines: [{ reserved: [{ lotId: lot, units: 3 }] }] } });
    expect(codesOf(await reserve(id))).toEqual(['nothing-to-keep']);
    expect(await onHand(lot)).toBe('5');
  });

  it('keeps as many as there are, and the rest once it is there', async () => {
    await tins(2);
    const id = await order(5);
    await reserve(id);
    await tins(4);
    await reserve(id);
    const [line] = await linesOf(id);
    expect(line?.reserved.map((row) => row.units).sort()).toEqual([2, 3]);
  });

  it('keeps no tin before its filling run is released', async () => {
    await makeFirmBase(bench, shop, '300');
    await fillTins(bench, shop, 5);
    const id = await order(5);
    expect(codesOf(await reserve(id))).toEqual(['nothing-to-keep']);
    expect(codesOf(await dispatch(id))).toEqual(['nothing-to-send']);
  });

  it('lets tins of a blocked lot go and keeps others for them', async () => {
    const lot = await tins(5);
    const id = await order(4);
    await reserve(id);
    const body = { status: 'blocked' as const, reason: 'A complaint' };
    await bench.get('setLotStatus', { params: { id: lot }, body });
    expect(codesOf(await dispatch(id))).toEqual(['lot-not-released-for-use']);
    const other = await tins(4);
    expect((await answerOf(bench, id)).answer).toBe('yes');
    expect(await reserve(id)).toMatchObject({
      value: { lines: [{ reserved: [{ lotId: other, units: 4 }] }] },
    });
    expect((await dispatch(id)).ok).toBe(true);
    expect(await onHand(lot)).toBe('5');
  });

  it('frees what was kept when the order is cancelled', async () => {
    await tins(5);
    const id = await order(5);
    await reserve(id);
    await bench.get('cancelOrder', { params: { id }, body: { version: 1, reason: 'Changed their mind' } });
    expect((await linesOf(id))[0]?.reserved).toEqual([]);
    expect((await reserve(await order(5))).ok).toBe(true);
    expect(codesOf(await reserve(id))).toEqual(['order-cancelled']);
    expect(codesOf(await dispatch(id))).toEqual(['order-cancelled']);
  });
});

describe('sending an order', () => {
  it('takes the tins off the shelf, and what is not kept yet is kept first', async () => {
    const lot = await tins(5);
    const id = await order(3);
    expect(await dispatch(id)).toMatchObject({
      value: { order: { state: 'sent', lines: [{ reserved: [], sent: [{ lotId: lot, units: 3 }] }] } },
    });
    expect(await onHand(lot)).toBe('2');
    expect(codesOf(await dispatch(id))).toEqual(['nothing-to-send']);
  });

  it('sends what there is, and the rest later', async () => {
    await tins(2);
    const id = await order(3);
    expect(await dispatch(id)).toMatchObject({ value: { order: { state: 'part-sent' } } });
    await tins(1);
    expect(await dispatch(id)).toMatchObject({ value: { order: { state: 'sent' } } });
  });

  it('counts the same parcel once when it is sent in twice', async () => {
    const lot = await tins(5);
    const id = await order(3);
    const body = { stamp: bench.stamp(), tracking: 'T-1' };
    const first = await dispatch(id, { body });
    const entries = countEntries(bench.context.storage);
    expect(await dispatch(id, { body })).toEqual(first);
    expect(countEntries(bench.context.storage)).toBe(entries);
    expect(await onHand(lot)).toBe('2');
  });

  it('sends nothing that is kept for another order', async () => {
    await tins(3);
    const first = await order(3, '2026-12-24');
    await reserve(first);
    expect(codesOf(await dispatch(await order(1)))).toEqual(['nothing-to-send']);
    expect((await dispatch(first)).ok).toBe(true);
  });
});

describe('an order that was sent whole', () => {
  it('cannot be cancelled, unless its parcel did not go after all', async () => {
    await tins(3);
    const id = await order(3);
    await dispatch(id);
    const { version, parcels } = await bench.get('getOrder', { params: { id } });
    const cancel = () => bench.ask('cancelOrder', { params: { id }, body: { version, reason: 'A slip' } });
    expect(codesOf(await cancel())).toEqual(['order-sent-whole']);
    await bench.get('takeParcelBack', { params: { id: parcels[0]?.id ?? '' }, body: {} });
    expect(codesOf(await cancel())).toEqual([]);
  });
});

describe('a parcel afterwards', () => {
  const parcelOf = async (id: string) => {
    const [parcel] = (await bench.get('getOrder', { params: { id } })).parcels;
    if (!parcel) throw new Error('it was sent');
    return parcel;
  };

  it('gets its tracking number once that is known, changes it, and keeps it out of the chain', async () => {
    await tins(3);
    const id = await order(3);
    await dispatch(id);
    const parcel = await parcelOf(id);
    expect(parcel).toMatchObject({ tracking: '', isTakenBack: false, lots: [{ units: 3 }] });
    const params = { id: parcel.id };
    for (const tracking of ['TRK-5501', 'TRK-5502']) {
      await bench.get('saveTracking', { params, body: { tracking } });
      expect((await parcelOf(id)).tracking).toBe(tracking);
    }
    await bench.get('saveTracking', { params, body: { tracking: '' } });
    expect((await parcelOf(id)).tracking).toBe('');
    const entries = await bench.context.storage.db.selectFrom('entry').selectAll().execute();
    expect(JSON.stringify(entries)).not.toContain('TRK-55');
  });

  it('did not go after all: its tins stand where they were, and the order waits again', async () => {
    const lot = await tins(5);
    const id = await order(3);
    await dispatch(id);
    const params = { id: (await parcelOf(id)).id };
    const back = await bench.get('takeParcelBack', { params, body: {} });
    expect(back).toMatchObject({ state: 'open', lines: [{ sent: [] }], parcels: [{ isTakenBack: true }] });
    expect(await onHand(lot)).toBe('5');
    const trace = await bench.get('traceLot', { params: { id: lot } });
    expect(trace).toMatchObject({ orders: [], unitsSent: 0, unitsOnHand: 5 });
    const { movements } = await bench.get('getLot', { params: { id: lot } });
    expect(
      movements
        .filter((row) => row.kind === 'sold')
        .map((row) => row.change)
        .sort(),
    ).toEqual(['-3', '3']);
    expect(movements.find((row) => row.change === '3')?.reason).toBe('not sent after all');
    expect(codesOf(await bench.ask('takeParcelBack', { params, body: {} }))).toEqual(['parcel-back-already']);
    expect(await dispatch(id)).toMatchObject({ value: { order: { state: 'sent' } } });
    expect(await onHand(lot)).toBe('2');
  });

  it('cannot be found where there is none', async () => {
    const params = { id: 'no-parcel' };
    expect(codesOf(await bench.ask('takeParcelBack', { params, body: {} }))).toEqual(['thing-not-found']);
    const body = { tracking: 'T' };
    expect(codesOf(await bench.ask('saveTracking', { params, body }))).toEqual(['thing-not-found']);
  });
});

describe('changing an order', () => {
  const change = (
    id: string,
    more: { units?: number; wantedBy?: string; placedOn?: string; version?: number },
  ) =>
    bench.ask('saveOrder', {
      body: {
        id,
        version: more.version ?? 1,
        customerId: null,
        placedOn: more.placedOn ?? '2026-11-20',
        wantedBy: more.wantedBy ?? '2026-11-27',
        note: '',
        lines: [{ productId: shop.product, units: more.units ?? 5 }],
      },
    });

  it('keeps what is kept for a line whose number changes', async () => {
    await tins(5);
    const id = await order(3);
    await reserve(id);
    expect((await change(id, { units: 4 })).ok).toBe(true);
    expect(await linesOf(id)).toMatchObject([{ units: 4, reserved: [{ units: 3 }] }]);
  });

  it('cannot order away what is kept or sent', async () => {
    await tins(5);
    const id = await order(4);
    await reserve(id);
    expect(await change(id, { units: 3 })).toMatchObject({
      problems: [{ code: 'line-below-kept', found: 3, allowed: 4 }],
    });
    await dispatch(id);
    expect(codesOf(await change(id, { units: 3 }))).toEqual(['line-below-kept']);
  });

  it('is refused where it was changed meanwhile, and says what it holds now', async () => {
    const id = await order(3);
    await change(id, { wantedBy: '2026-11-30' });
    expect(await change(id, { wantedBy: '2026-12-01' })).toMatchObject({
      problems: [{ code: 'changed-meanwhile', found: 1, allowed: 2, parameters: { holds: '2026-11-30' } }],
    });
    const body = { version: 1, reason: 'Too late' };
    expect(codesOf(await bench.ask('cancelOrder', { params: { id }, body }))).toEqual(['changed-meanwhile']);
  });

  it('refuses a day before it was placed, an unknown order, and a cancelled one', async () => {
    const id = await order(3);
    expect(codesOf(await change(id, { wantedBy: '2026-11-19' }))).toEqual(['wanted-before-placed']);
    expect((await change(id, { wantedBy: '2026-11-20' })).ok).toBe(true);
    expect(codesOf(await change('none', {}))).toEqual(['thing-not-found']);
    await bench.get('cancelOrder', { params: { id }, body: { version: 2, reason: 'Gone' } });
    expect(codesOf(await change(id, { version: 3 }))).toEqual(['order-cancelled']);
  });
});

describe('listing orders', () => {
  it('has none where none was entered', async () => {
    expect(await bench.get('listOrders')).toEqual([]);
  });

  it('asks the file as often for a hundred orders as for three', async () => {
    await tins(5);
    const enter = async (count: number) => {
      for (let nth = 0; nth < count; nth += 1)
        await order(1 + (nth % 4), `2026-12-${String(1 + (nth % 28)).padStart(2, '0')}`);
    };
    const countReads = (read: () => Promise<unknown>) => countQueries(bench, read);
    // One that leaves mixture and base to be made: each is checked once, whatever else is ordered.
    await order(30, '2026-12-30');
    await enter(2);
    const list = () => bench.get('listOrders');
    const morning = () => bench.get('getMorning');
    const few = [await countReads(list), await countReads(morning)];
    await enter(97);
    expect([await countReads(list), await countReads(morning)]).toEqual(few);
    expect(few[0]).toBeGreaterThan(5);
    const answered = await list();
    expect(answered).toHaveLength(100);
    // Forty tins and forty lids stand there, and five filled tins: 45 pieces at the most can be promised.
    const promised = answered.filter((row) => row.promise.short.length === 0);
    expect(promised.reduce((sum, row) => sum + (row.lines[0]?.units ?? 0), 0)).toBeLessThanOrEqual(45);
    expect(promised.length).toBeGreaterThan(3);
  });
});
