import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  buildMakingBench,
  inGrams,
  type MakingBench,
  makeFirmBase,
} from '../../test/workshop/build-making.ts';
import { answerOf, buildOrder, buildTins, fillTins, nameWorkshop } from '../../test/workshop/build-order.ts';
import { buildLot } from '../../test/workshop/build-stock.ts';
import { codesOf } from '../../test/workshop/codes-of.ts';
import { countQueries } from '../../test/workshop/count-queries.ts';
import { openTestWorkshop, type TestWorkshop } from '../../test/workshop/open-test-workshop.ts';

let bench: TestWorkshop;
let shop: MakingBench;
let base: string;

beforeEach(async () => {
  bench = await openTestWorkshop();
  await nameWorkshop(bench);
  shop = await buildMakingBench(bench);
  base = await makeFirmBase(bench, shop, '800');
});
afterEach(() => bench.close());

type Status = 'quarantine' | 'released' | 'blocked' | 'rejected';
const set = (id: string, status: Status) =>
  bench.get('setLotStatus', { params: { id }, body: { status, reason: 'Smells odd' } });
const release = (id: string) =>
  bench.ask('releaseRun', { params: { id }, body: { verdict: 'released', reason: '' } });
const dispatch = (id: string) => bench.ask('dispatchOrder', { params: { id }, body: { tracking: '' } });
const keep = (id: string) => bench.ask('reserveOrder', { params: { id } });
const sentOf = async (id: string) =>
  (await bench.get('getOrder', { params: { id } })).lines.flatMap((line) =>
    line.sent.map((row) => [row.lotId, row.units]),
  );
const newScent = () => buildLot(bench, shop.materials.scent, { quantity: '50', bestBefore: '2027-06-30' });

describe('a lot behind that is not released', () => {
  it.each(['quarantine', 'blocked', 'rejected'] as const)(
    'stops the release where it is %s',
    async (status) => {
      const { run } = await fillTins(bench, shop, 5);
      await set(shop.lots.scent, status);
      const refused = await release(run);
      expect(codesOf(refused)).toEqual(['release-check-failed']);
      expect(refused).toMatchObject({ problems: [{ where: 'lots' }] });
    },
  );

  it.each(['quarantine', 'blocked', 'rejected'] as const)(
    'stops what goes out where it is %s',
    async (status) => {
      const lot = await buildTins(bench, shop, 5);
      const order = await buildOrder(bench, shop.product, 2);
      await set(shop.lots.shea, status);
      expect(codesOf(await dispatch(order))).toEqual(['lot-behind-stopped']);
      expect(codesOf(await keep(order))).toEqual(['lot-behind-stopped']);
      const gift = { kind: 'gift' as const, quantity: '1', reason: 'A friend' };
      expect(codesOf(await bench.ask('moveLot', { params: { id: lot }, body: gift }))).toEqual([
        'lot-behind-stopped',
      ]);
    },
  );

  it('stops tins of a base that somebody put back into quarantine', async () => {
    const { run } = await fillTins(bench, shop, 5);
    await set(base, 'quarantine');
    expect(codesOf(await release(run))).toEqual(['release-check-failed']);
    await set(base, 'released');
    expect(codesOf(await release(run))).toEqual([]);
  });

  it('stops nothing once it is released again, and nothing that it did not go into', async () => {
    await buildTins(bench, shop, 5);
    const order = await buildOrder(bench, shop.product, 2);
    await set(await newScent(), 'blocked');
    await set(shop.lots.scent, 'quarantine');
    await set(shop.lots.scent, 'released');
    expect(codesOf(await dispatch(order))).toEqual([]);
  });
});

describe('tins with a stopped lot behind them', () => {
  it('are not promised, and are not what can go out today', async () => {
    await buildTins(bench, shop, 5);
    const order = await buildOrder(bench, shop.product, 2);
    const isToSend = async () => (await bench.get('getMorning')).sendToday.length > 0;
    expect(await isToSend()).toBe(true);
    await set(shop.lots.scent, 'blocked');
    expect(await answerOf(bench, order)).toMatchObject({ answer: 'no', tinsReady: 0 });
    expect(await isToSend()).toBe(false);
  });

  it('are kept in vain', async () => {
    await buildTins(bench, shop, 5);
    const order = await buildOrder(bench, shop.product, 2);
    await keep(order);
    await set(shop.lots.scent, 'quarantine');
    expect(await answerOf(bench, order)).toMatchObject({ answer: 'no', tinsReady: 0 });
  });

  it('do not count as usable on the shelf', async () => {
    await buildTins(bench, shop, 5);
    await set(shop.lots.scent, 'blocked');
    const { items } = await bench.get('getShelf');
    expect(items.find((item) => item.itemId === shop.product)).toMatchObject({ usable: '0', onHand: '5' });
  });

  it('are passed over by a parcel where others are free', async () => {
    await buildTins(bench, shop, 5);
    await set(shop.lots.scent, 'blocked');
    await newScent();
    const good = await buildTins(bench, shop, 3);
    const order = await buildOrder(bench, shop.product, 2);
    expect(codesOf(await dispatch(order))).toEqual([]);
    expect(await sentOf(order)).toEqual([[good, 2]]);
  });

  it('stay here while kept ones go as a part', async () => {
    await buildTins(bench, shop, 5);
    await set(shop.lots.scent, 'blocked');
    await newScent();
    const good = await buildTins(bench, shop, 3);
    const order = await buildOrder(bench, shop.product, 4);
    await keep(order);
    expect(codesOf(await dispatch(order))).toEqual([]);
    expect(await sentOf(order)).toEqual([[good, 3]]);
  });
});

describe('a base with a stopped lot behind it', () => {
  it('is planned into no batch and promised for none', async () => {
    await set(shop.lots.shea, 'blocked');
    const wish = inGrams(shop.mixtureRevision, '100');
    const plan = await bench.get('planBatch', { body: wish });
    expect(plan.short.map((row) => row.itemId)).toContain(shop.base);
    const order = await buildOrder(bench, shop.product, 5);
    expect((await answerOf(bench, order)).answer).not.toBe('yes');
  });

  it('is not weighed in', async () => {
    const batch = await bench.get('startBatch', { body: { wish: inGrams(shop.mixtureRevision, '100') } });
    await set(shop.lots.shea, 'quarantine');
    const [screen] = batch.screens.filter((one) => one.kind === 'addition');
    if (screen?.kind !== 'addition') throw new Error('a batch weighs something in');
    const body = {
      position: screen.position,
      lotId: base,
      scaleId: screen.scaleId,
      actualGrams: screen.targetGrams,
    };
    const refused = await bench.ask('recordAddition', { params: { id: batch.id }, body });
    expect(codesOf(refused)).toEqual(['lot-behind-stopped']);
  });
});

describe('keeping tins', () => {
  it('asks the file as often for three lots as for one', async () => {
    const counts: number[] = [];
    for (let lots = 1; lots <= 3; lots += 1) {
      await buildTins(bench, shop, 3);
      const order = await buildOrder(bench, shop.product, 1);
      counts.push(await countQueries(bench, () => keep(order)));
    }
    expect(new Set(counts).size).toBe(1);
  });
});
