import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  buildMakingBench,
  inGrams,
  type MakingBench,
  makeBatch,
  makeFirmBase,
} from '../../../test/workshop/build-making.ts';
import { buildOrder, buildTins, nameWorkshop } from '../../../test/workshop/build-order.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { needsOfOpenOrders } from './needs.ts';

let bench: TestWorkshop;
let shop: MakingBench;

beforeEach(async () => {
  bench = await openTestWorkshop();
  shop = await buildMakingBench(bench);
  await nameWorkshop(bench);
});
afterEach(() => bench.close());

const order = (productId: string, units: number) => buildOrder(bench, productId, units);
const MICROGRAMS = 1_000_000;

describe('what open orders need', () => {
  it('is nothing where none is open', async () => {
    const { missing, toMake, amounts, toMelt, short } = await needsOfOpenOrders(bench.context);
    expect([missing, toMake, amounts, toMelt, short].map((map) => map.size)).toEqual([0, 0, 0, 0, 0]);
  });

  it('takes a mixture as one batch: its sample and the loss of its bowl once', async () => {
    await order(shop.product, 3);
    await order(shop.product, 2);
    await order(shop.smallProduct, 4);
    const plan = await bench.get('planBatch', {
      body: {
        ...inGrams(shop.mixtureRevision, '1'),
        size: {
          by: 'tins',
          tins: [
            { productId: shop.product, units: 5 },
            { productId: shop.smallProduct, units: 4 },
          ],
          retained: { keep: true, grams: '10' },
        },
      },
    });
    const { amounts, missing } = await needsOfOpenOrders(bench.context);
    const sizing = plan.sizing.at(-1)?.parameters.grams;
    const inTins = plan.sizing
      .filter((one) => one.code === 'sizing-tins')
      .map((one) => Number(one.parameters.grams));
    // By hand: (tins + 10 g sample) over 97 %, taken up to the next tenth of a gram.
    const byHand = Math.ceil(((inTins.reduce((sum, grams) => sum + grams, 0) + 10) / 0.97) * 10) / 10;
    expect(sizing).toBe(String(byHand));
    expect(amounts.get(shop.mixture)).toBe(Math.round(byHand * MICROGRAMS));
    expect(Object.fromEntries(missing)).toEqual({ [shop.product]: 5, [shop.smallProduct]: 4 });
    expect(
      [shop.materials.lid, shop.materials.tin, shop.materials.smallTin].map((id) => amounts.get(id)),
    ).toEqual([9, 5, 4]);
  });

  it('opens the base that has to be melted: 65 % shea and 35 % oil, by its recipe', async () => {
    await order(shop.product, 5);
    const { amounts, toMelt } = await needsOfOpenOrders(bench.context);
    const base = toMelt.get(shop.base) ?? 0;
    expect(base).toBeGreaterThan(5 * 35 * 0.99 * MICROGRAMS);
    expect(amounts.get(shop.materials.shea)).toBe(Math.ceil((base * 65) / 100));
    expect(amounts.get(shop.materials.oil)).toBe(Math.ceil((base * 35) / 100));
  });

  it('takes off what is free, what sets and what is firm', async () => {
    await makeFirmBase(bench, shop, '250');
    await buildTins(bench, shop, 3);
    await order(shop.product, 5);
    const before = await needsOfOpenOrders(bench.context);
    expect(before.missing.get(shop.product)).toBe(2);
    expect(before.amounts.get(shop.materials.lid)).toBe(2);
    await makeBatch(bench, inGrams(shop.baseRevision, '300'));
    const after = await needsOfOpenOrders(bench.context);
    expect(after.toMelt.size).toBe(0);
    expect(after.amounts.get(shop.materials.shea)).toBeUndefined();
  });

  it('binds what a batch under way has still to take', async () => {
    await order(shop.product, 5);
    const wish = inGrams(shop.baseRevision, '2000');
    const started = await bench.get('startBatch', { body: { wish } });
    const { amounts, short, toMelt } = await needsOfOpenOrders(bench.context);
    expect([toMelt.size, short.size, amounts.get(shop.materials.shea)]).toEqual([0, 0, undefined]);
    await bench.get('abandonBatch', { params: { id: started.id }, body: { reason: 'Begun anew' } });
    expect((await needsOfOpenOrders(bench.context)).toMelt.size).toBe(1);
  });

  it('names what is short in the unit of the ledger', async () => {
    await order(shop.product, 50);
    const { short } = await needsOfOpenOrders(bench.context);
    expect(short.get(shop.materials.lid)).toBe(10);
    expect(short.get(shop.materials.tin)).toBe(10);
    expect(short.has(shop.materials.label)).toBe(false);
  });
});
