import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildMakingBench, type MakingBench, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { buildOrder, buildTins, nameWorkshop } from '../../../test/workshop/build-order.ts';
import { buildLot } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';

let bench: TestWorkshop;
let shop: MakingBench;

/** Five released tins of the first lot of scent. */
beforeEach(async () => {
  bench = await openTestWorkshop();
  await nameWorkshop(bench);
  shop = await buildMakingBench(bench);
  await makeFirmBase(bench, shop, '800');
});
afterEach(() => bench.close());

const block = (lot: string) =>
  bench.get('setLotStatus', {
    params: { id: lot },
    body: { status: 'blocked', reason: 'Called back by the supplier' },
  });
const keep = (id: string) => bench.ask('reserveOrder', { params: { id } });
const keptOf = async (id: string) =>
  (await bench.get('getOrder', { params: { id } })).lines.flatMap((line) =>
    line.reserved.map((row) => [row.lotId, row.units]),
  );

describe('keeping tins for an order', () => {
  it('is refused by name where a lot behind all that is there was stopped', async () => {
    await buildTins(bench, shop, 5);
    const order = await buildOrder(bench, shop.product, 2);
    await block(shop.lots.scent);
    const refused = await keep(order);
    expect(codesOf(refused)).toEqual(['lot-behind-stopped']);
    expect(await keptOf(order)).toEqual([]);
  });

  it('passes such tins over where others are there, and lets go of those that were kept', async () => {
    const first = await buildTins(bench, shop, 5);
    const order = await buildOrder(bench, shop.product, 2);
    await keep(order);
    expect(await keptOf(order)).toEqual([[first, 2]]);
    await block(shop.lots.scent);
    await buildLot(bench, shop.materials.scent, { quantity: '50', bestBefore: '2027-06-30' });
    const second = await buildTins(bench, shop, 5);
    expect(codesOf(await keep(order))).toEqual([]);
    expect(await keptOf(order)).toEqual([[second, 2]]);
  });
});
