import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildMakingBench, type MakingBench } from '../../../test/workshop/build-making.ts';
import { buildOrder } from '../../../test/workshop/build-order.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';

let bench: TestWorkshop;
let shop: MakingBench;

beforeEach(async () => {
  bench = await openTestWorkshop();
  shop = await buildMakingBench(bench);
});
afterEach(() => bench.close());

const productOf = async (id: string) => {
  const found = (await bench.get('listProducts')).find((row) => row.id === id);
  if (!found) throw new Error('the bench sells it');
  return found;
};

describe('what is sold', () => {
  it('is a mixture in packaging', async () => {
    const { details } = await productOf(shop.product);
    const save = (more: Partial<typeof details>) =>
      bench.ask('saveProduct', { body: { details: { ...details, ...more } } });
    expect((await save({ name: 'Another size' })).ok).toBe(true);
    expect(codesOf(await save({ formulaId: shop.base }))).toEqual(['product-of-a-base']);
    expect(codesOf(await save({ formulaId: 'none' }))).toEqual(['thing-not-found']);
    expect(codesOf(await save({ lidId: shop.materials.shea }))).toEqual(['not-packaging']);
    expect(codesOf(await save({ tinId: 'none' }))).toEqual(['thing-not-found']);
  });

  it('is changed once for each state that somebody saw', async () => {
    const { id, version, details } = await productOf(shop.product);
    const change = (name: string) =>
      bench.ask('saveProduct', { body: { id, version, details: { ...details, name } } });
    expect((await change('New name')).ok).toBe(true);
    expect(codesOf(await change('Newer name'))).toEqual(['changed-meanwhile']);
  });

  it('is not ordered any more once it is withdrawn, and old orders of it can be changed', async () => {
    const before = await buildOrder(bench, shop.product, 2);
    const { id, version, details } = await productOf(shop.product);
    await bench.get('saveProduct', { body: { id, version, details: { ...details, isWithdrawn: true } } });
    const order = {
      customerId: null,
      placedOn: '2026-11-20',
      wantedBy: '2026-11-27',
      note: '',
      lines: [{ productId: id, units: 3 }],
    };
    expect(codesOf(await bench.ask('saveOrder', { body: order }))).toEqual(['product-withdrawn']);
    expect((await bench.ask('saveOrder', { body: { ...order, id: before, version: 1 } })).ok).toBe(true);
  });

  it('stands once in an order', async () => {
    const line = { productId: shop.product, units: 1 };
    const body = {
      customerId: null,
      placedOn: '2026-11-20',
      wantedBy: '2026-11-27',
      note: '',
      lines: [line, line],
    };
    expect(codesOf(await bench.ask('saveOrder', { body }))).toEqual(['product-twice']);
    const asked = { wantedBy: body.wantedBy, lines: body.lines };
    expect(codesOf(await bench.ask('previewPromise', { body: asked }))).toEqual(['product-twice']);
  });
});

describe('who buys', () => {
  it('can be erased for good; the order keeps its number', async () => {
    const { id } = await bench.get('saveCustomer', { body: { name: 'C. Buyer', address: '5 Any Road' } });
    const order = await buildOrder(bench, shop.product, 2, { customerId: id });
    await bench.get('eraseCustomer', { params: { id }, body: {} });
    expect(await bench.get('getOrder', { params: { id: order } })).toMatchObject({
      customerId: id,
      customerName: '',
      number: 101,
    });
    const [customer] = await bench.get('listCustomers');
    expect(customer).toMatchObject({ name: '', address: '', isErased: true });
    const again = { id, version: 2, name: 'C. Buyer', address: '' };
    expect(codesOf(await bench.ask('saveCustomer', { body: again }))).toEqual(['customer-erased']);
  });
});
