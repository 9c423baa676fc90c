import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  buildMakingBench,
  inGrams,
  type MakingBench,
  makeBatch,
} from '../../../test/workshop/build-making.ts';
import { buildIngredient, buildLot, buildPackaging } from '../../../test/workshop/build-stock.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';

let bench: TestWorkshop;
beforeEach(async () => {
  bench = await openTestWorkshop();
});
afterEach(() => bench.close());

const shelf = () => bench.get('getShelf');
async function itemOf(itemId: string) {
  const item = (await shelf()).items.find((row) => row.itemId === itemId);
  if (!item) throw new Error('it stands on no shelf');
  return item;
}
const order = (productId: string, units: number) =>
  bench.get('saveOrder', {
    body: {
      customerId: null,
      placedOn: '2026-11-26',
      wantedBy: '2026-12-10',
      note: '',
      lines: [{ productId, units }],
    },
  });

describe('the shelf', () => {
  it('of a new workshop says that nothing is written down yet', async () => {
    expect(await shelf()).toEqual({ sentence: { code: 'shelf-answer-empty', parameters: {} }, items: [] });
  });

  it('sums up the lots of each thing, the first to end first', async () => {
    const fat = await buildIngredient(bench, { name: 'Shea butter' });
    await buildLot(bench, fat, { quantity: '700', bestBefore: '2027-06-30' });
    await buildLot(bench, fat, { quantity: '300.5', bestBefore: '2027-03-31' });
    expect(await itemOf(fat)).toMatchObject({
      name: 'Shea butter',
      group: 'ingredient',
      unit: 'g',
      onHand: '1000.5',
      usable: '1000.5',
      needed: '0',
      reserved: '0',
      firstEnds: '2027-03-31',
      fullMark: '1000.5',
      lotsWithUnknowns: 0,
      state: 'ready',
      sentence: { code: 'shelf-here' },
      lots: [{ onHand: '300.5' }, { onHand: '700' }],
    });
  });

  it('remembers the most that ever stood, which is what a full tub stands for', async () => {
    const fat = await buildIngredient(bench);
    const first = await buildLot(bench, fat, { quantity: '800' });
    const bin = (quantity: string) =>
      bench.get('moveLot', { params: { id: first }, body: { kind: 'binned', quantity, reason: '' } });
    await bin('500');
    await buildLot(bench, fat, { quantity: '400' });
    // 800, then 300, then 700: the most was 800.
    expect(await itemOf(fat)).toMatchObject({ onHand: '700', fullMark: '800' });
  });

  it('leaves out lots that are used up, and retained samples', async () => {
    const fat = await buildIngredient(bench);
    const lot = await buildLot(bench, fat, { quantity: '100' });
    const move = (kind: 'binned' | 'moved', quantity: string, toPlaceId?: string) =>
      bench.get('moveLot', {
        params: { id: lot },
        body: { kind, quantity, reason: '', ...(toPlaceId && { toPlaceId }) },
      });
    await move('moved', '10', bench.places.retained);
    expect(await itemOf(fat)).toMatchObject({ onHand: '90' });
    await bench.get('moveLot', {
      params: { id: lot },
      body: { kind: 'binned', quantity: '90', reason: '' },
    });
    expect(await itemOf(fat)).toMatchObject({ onHand: '0', lots: [], sentence: { code: 'shelf-none' } });
  });

  it('counts only what is released and within its date as usable', async () => {
    const fat = await buildIngredient(bench);
    await buildLot(bench, fat, { quantity: '1', bestBefore: '2026-12-31' });
    await buildLot(bench, fat, { quantity: '10', accept: false });
    await buildLot(bench, fat, { quantity: '100', bestBefore: null });
    expect(await itemOf(fat)).toMatchObject({ onHand: '111', usable: '101', lotsWithUnknowns: 1 });
    bench.setClock('2026-12-31T23:59:00Z');
    expect(await itemOf(fat)).toMatchObject({ usable: '101' });
    bench.setClock('2027-01-01T00:00:00Z');
    expect(await itemOf(fat)).toMatchObject({
      usable: '100',
      state: 'watch',
      sentence: { code: 'shelf-lot-over', parameters: { day: '2026-12-31' } },
    });
  });

  it('says which lot to use first from thirty days before its end', async () => {
    const fat = await buildIngredient(bench);
    await buildLot(bench, fat, { bestBefore: '2026-12-27' });
    expect(await itemOf(fat)).toMatchObject({ state: 'ready' });
    bench.setClock('2026-11-27T08:00:00Z');
    expect(await itemOf(fat)).toMatchObject({ state: 'watch', sentence: { code: 'shelf-use-first' } });
  });

  it('asks to look below the mark for buying, and not at it', async () => {
    const tin = await buildPackaging(bench, { reorderBelow: '20' });
    const lot = await buildLot(bench, tin, { quantity: '20' });
    expect(await itemOf(tin)).toMatchObject({ reorderBelow: '20', state: 'ready' });
    await bench.get('moveLot', { params: { id: lot }, body: { kind: 'broken', quantity: '1', reason: '' } });
    expect(await itemOf(tin)).toMatchObject({
      state: 'watch',
      sentence: { code: 'shelf-low', parameters: { amount: '19', below: '20', unit: 'pieces' } },
    });
    expect((await shelf()).sentence).toMatchObject({ code: 'shelf-answer-watch', parameters: { n: 1 } });
  });

  it('says what is held, and that nothing may be used where all of it is', async () => {
    const fat = await buildIngredient(bench);
    await buildLot(bench, fat, { quantity: '1', accept: false });
    expect(await itemOf(fat)).toMatchObject({ state: 'going', sentence: { code: 'shelf-all-held' } });
    const other = await buildLot(bench, fat, { quantity: '1' });
    await bench.get('setLotStatus', { params: { id: other }, body: { status: 'blocked', reason: 'Odd' } });
    await buildLot(bench, fat, { quantity: '1' });
    expect(await itemOf(fat)).toMatchObject({ sentence: { code: 'shelf-lot-held' } });
  });
});

describe('the shelf beside open orders', () => {
  let shop: MakingBench;
  beforeEach(async () => {
    shop = await buildMakingBench(bench);
  });

  it('says what they need, down to the materials of a base that is not there', async () => {
    await order(shop.product, 5);
    expect(await itemOf(shop.materials.tin)).toMatchObject({
      needed: '5',
      state: 'ready',
      sentence: { code: 'shelf-enough' },
    });
    expect(Number((await itemOf(shop.base)).needed)).toBeGreaterThan(175);
    expect(Number((await itemOf(shop.materials.shea)).needed)).toBeGreaterThan(100);
    expect(await itemOf(shop.product)).toMatchObject({
      needed: '5',
      state: 'watch',
      sentence: { code: 'shelf-tins-missing', parameters: { n: 5 } },
    });
  });

  it('stops where they ask for more than there is, and says by how much', async () => {
    await order(shop.product, 45);
    expect(await itemOf(shop.materials.tin)).toMatchObject({
      needed: '45',
      usable: '40',
      state: 'stop',
      sentence: { code: 'shelf-short', parameters: { amount: '5', unit: 'pieces' } },
    });
    const { sentence, items } = await shelf();
    expect(sentence.code).toBe('shelf-answer-short');
    expect(sentence.parameters.n).toBe(items.filter((item) => item.state === 'stop').length);
  });

  it('shows a base that is setting, and when it may be firm', async () => {
    await makeBatch(bench, inGrams(shop.baseRevision, '500'));
    expect(await itemOf(shop.base)).toMatchObject({
      onHand: '499',
      usable: '0',
      state: 'going',
      sentence: { code: 'shelf-setting', parameters: { from: '2026-11-26T20:05:00Z' } },
    });
  });
});
