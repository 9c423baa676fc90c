import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildMakingBench, type MakingBench, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { buildOrder, buildTins, nameWorkshop } from '../../../test/workshop/build-order.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';

let bench: TestWorkshop;
let shop: MakingBench;

beforeEach(async () => {
  bench = await openTestWorkshop();
  shop = await buildMakingBench(bench);
  await nameWorkshop(bench);
});
afterEach(() => bench.close());

const amountsBehind = async (id: string) => {
  const { madeOf } = await bench.get('traceLot', { params: { id } });
  return new Map(madeOf.map(({ lot, amount }) => [lot.id, Number(amount)]));
};
const cameIn = async (id: string) => Number((await bench.get('getLot', { params: { id } })).lot.cameIn);

describe('what stands behind a tin', () => {
  it('is its own part of a base, and not all that the base was made of', async () => {
    const base = await makeFirmBase(bench, shop, '600');
    const tins = await buildTins(bench, shop, 5);
    const behind = await amountsBehind(tins);
    const { madeOf } = await bench.get('traceLot', { params: { id: tins } });
    const bowl = madeOf.find(({ lot }) => lot.number.endsWith('bowl'))?.lot.id ?? '';
    // Five tins of 46.50 g gross in tins of 11.4 g.
    expect(behind.get(bowl)).toBe(175.5);
    const intoBowl = (await amountsBehind(bowl)).get(base) ?? 0;
    expect(behind.get(base)).toBeCloseTo((intoBowl * 175.5) / (await cameIn(bowl)), 4);
    // The recipe of the base: 520 of 800 g are shea; 599 g came of 600 g that went in.
    const shea = behind.get(shop.lots.shea) ?? 0;
    expect(shea).toBeCloseTo((((behind.get(base) ?? 0) * 520) / 800) * (600 / (await cameIn(base))), 3);
    expect(shea).toBeLessThan(150);
    expect(behind.get(shop.lots.lid)).toBe(5);
  });

  it('is told of a lot as of nothing but itself where nothing was made of anything', async () => {
    const { madeOf, wentInto } = await bench.get('traceLot', { params: { id: shop.lots.shea } });
    expect({ madeOf, wentInto }).toEqual({ madeOf: [], wentInto: [] });
  });
});

describe('a lot that a trace reached', () => {
  it('is told as its own page tells it, retained samples left out', async () => {
    await makeFirmBase(bench, shop, '600');
    const tins = await buildTins(bench, shop, 5);
    await bench.get('moveLot', {
      params: { id: tins },
      body: { kind: 'moved', quantity: '1', toPlaceId: bench.places.retained, reason: 'Sample kept' },
    });
    await bench.get('setLotStatus', {
      params: { id: shop.lots.lid },
      body: { status: 'blocked', reason: 'Dents' },
    });
    const { madeOf } = await bench.get('traceLot', { params: { id: tins } });
    const { wentInto } = await bench.get('traceLot', { params: { id: shop.lots.lid } });
    expect(wentInto.map(({ lot }) => [lot.id, lot.onHand])).toEqual([[tins, '4']]);
    expect(madeOf.length).toBeGreaterThan(4);
    for (const { lot } of [...madeOf, ...wentInto])
      expect((await bench.get('getLot', { params: { id: lot.id } })).lot).toMatchObject(lot);
    expect(madeOf.find(({ lot }) => lot.id === shop.lots.lid)?.lot.status).toBe('blocked');
  });
});

describe('looking for a lot', () => {
  const find = async (like: string) =>
    (await bench.get('findLots', { query: { like } })).map((lot) => lot.number);

  it.each(['QB-0001', 'qb-0001', 'qb-1', 'QB 1', 'qb1', 'b-0001'])('finds the base by %s', async (like) => {
    await makeFirmBase(bench, shop, '600');
    expect(await find(like)).toContain('QB-0001');
  });

  it.each(['101', '#101', 'order 101', 'Order #101'])('finds the tins of an order by %s', async (like) => {
    await makeFirmBase(bench, shop, '600');
    const tins = await buildTins(bench, shop, 5);
    const order = await buildOrder(bench, shop.product, 2);
    expect(await find(like)).toEqual([]);
    await bench.get('dispatchOrder', { params: { id: order }, body: { tracking: '' } });
    const { lot } = await bench.get('getLot', { params: { id: tins } });
    expect(await find(like)).toEqual([lot.number]);
    expect(await find('10')).toEqual([]);
  });

  it('finds nothing by what stands nowhere', async () => {
    expect(await find('qb-1')).toEqual([]);
    expect(await find('no such lot')).toEqual([]);
    expect(await find('%')).toEqual([]);
  });
});
