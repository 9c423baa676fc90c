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
  await makeFirmBase(bench, shop, '300');
  await buildTins(bench, shop, 5);
});
afterEach(() => bench.close());

/** Carries `write` out as soon as `read` looks up the workshop, which lies between its orders and the answer to them. */
async function readWhile<T>(read: () => Promise<T>, write: () => Promise<unknown>): Promise<T> {
  const { storage } = bench.context;
  const { db } = storage;
  let written: Promise<unknown> | undefined;
  const watched = db.withPlugin({
    transformQuery({ node }) {
      if (written === undefined && JSON.stringify(node).includes('"name":"workshop"')) {
        Object.assign(storage, { db });
        written = write();
      }
      return node;
    },
    transformResult: async ({ result }) => result,
  });
  Object.assign(storage, { db: watched });
  const answer = await read();
  Object.assign(storage, { db });
  expect(written).toBeDefined();
  await written;
  return answer;
}

describe('orders and the answers to them', () => {
  it('are of one moment, though another page cancels an order while they are read', async () => {
    const id = await buildOrder(bench, shop.product, 3);
    const cancel = () =>
      bench.get('cancelOrder', { params: { id }, body: { version: 1, reason: 'Not wanted' } });
    const [seen] = await readWhile(() => bench.get('listOrders'), cancel);
    expect([seen?.state, seen?.promise.answer]).toEqual(['open', 'yes']);
    const [after] = await bench.get('listOrders');
    expect([after?.state, after?.promise.answer]).toEqual(['cancelled', 'cancelled']);
  });

  it('are of one moment where one order is looked at', async () => {
    const id = await buildOrder(bench, shop.product, 3);
    const cancel = () =>
      bench.get('cancelOrder', { params: { id }, body: { version: 1, reason: 'Not wanted' } });
    const seen = await readWhile(() => bench.get('getOrder', { params: { id } }), cancel);
    expect([seen.state, seen.promise.answer]).toEqual(['open', 'yes']);
  });
});
