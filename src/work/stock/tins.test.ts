import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildMakingBench, type MakingBench, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { buildOrder, fillTins, nameWorkshop } from '../../../test/workshop/build-order.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';

let bench: TestWorkshop;
let shop: MakingBench;
let run: string;
let tins: string;
let stall: string;

/** Five filled tins, not released. */
beforeEach(async () => {
  bench = await openTestWorkshop();
  await nameWorkshop(bench);
  shop = await buildMakingBench(bench);
  stall = (await bench.get('savePlace', { body: { name: 'Harbour market', kind: 'stall' } })).id;
  await makeFirmBase(bench, shop, '400');
  const filled = await fillTins(bench, shop, 5);
  run = filled.run;
  tins = filled.lot;
});
afterEach(() => bench.close());

const lot = async () => (await bench.get('getLot', { params: { id: tins } })).lot;
const scent = async () => (await bench.get('getLot', { params: { id: shop.lots.scent } })).lot;
const release = () =>
  bench.get('releaseRun', { params: { id: run }, body: { verdict: 'released', reason: '' } });
const set = (status: 'released' | 'blocked') =>
  bench.ask('setLotStatus', { params: { id: tins }, body: { status, reason: 'Looked at it' } });
const move = (
  kind: 'gift' | 'tester' | 'own-use' | 'broken' | 'moved',
  quantity: string,
  toPlaceId?: string,
) =>
  bench.ask('moveLot', {
    params: { id: tins },
    body: { kind, quantity, reason: '', ...(toPlaceId && { toPlaceId }) },
  });

describe('filled tins', () => {
  it('are released with their filling run, and not past it', async () => {
    expect(await lot()).toMatchObject({ status: 'quarantine', onHand: '5', unit: 'pieces' });
    expect(codesOf(await set('released'))).toEqual(['lot-wants-run-release']);
    await set('blocked');
    expect(codesOf(await set('released'))).toEqual(['lot-wants-run-release']);
  });

  it('once released may be blocked and released again, with a reason', async () => {
    await release();
    expect(codesOf(await set('blocked'))).toEqual([]);
    expect(codesOf(await set('released'))).toEqual([]);
  });

  it('are given away or brought to a stall only once they are released', async () => {
    expect(codesOf(await move('gift', '1'))).toEqual(['lot-not-released-for-use']);
    expect(codesOf(await move('moved', '1', stall))).toEqual(['lot-not-released-for-use']);
    expect(codesOf(await move('broken', '1'))).toEqual([]);
    await release();
    expect(codesOf(await move('gift', '1'))).toEqual([]);
    expect(codesOf(await move('moved', '1', stall))).toEqual([]);
    expect(await lot()).toMatchObject({ onHand: '3' });
  });

  it('are not given away where they are kept for an order', async () => {
    await release();
    const id = await buildOrder(bench, shop.product, 4);
    await bench.get('reserveOrder', { params: { id } });
    expect((await lot()).reserved).toBe('4');
    expect(await move('tester', '2')).toMatchObject({
      ok: false,
      problems: [{ code: 'lot-kept-for-orders', found: '2', allowed: '1' }],
    });
    expect(codesOf(await move('tester', '1'))).toEqual([]);
    expect(codesOf(await move('broken', '1'))).toEqual([]);
  });

  it('do not leave the house once a lot behind them is stopped', async () => {
    await release();
    const params = { id: shop.lots.scent };
    const stop = (status: 'blocked' | 'released') =>
      bench.get('setLotStatus', { params, body: { status, reason: 'Called back by the supplier' } });
    await stop('blocked');
    expect(await move('gift', '1')).toMatchObject({
      ok: false,
      problems: [{ code: 'lot-behind-stopped', found: (await scent()).number }],
    });
    expect(codesOf(await move('tester', '1'))).toEqual(['lot-behind-stopped']);
    expect(codesOf(await move('moved', '1', stall))).toEqual(['lot-behind-stopped']);
    expect(codesOf(await move('broken', '1')), 'that one broke is a fact').toEqual([]);
    await stop('released');
    expect(codesOf(await move('moved', '1', stall))).toEqual([]);
  });

  it('that were blocked come back only by the checks of their release, as of today', async () => {
    await release();
    await set('blocked');
    const params = { id: shop.lots.scent };
    await bench.get('setLotStatus', { params, body: { status: 'blocked', reason: 'Called back' } });
    const refused = await set('released');
    expect(codesOf(refused)).toEqual(['release-check-failed']);
    expect(refused).toMatchObject({ problems: [{ where: 'lots' }] });
    await bench.get('setLotStatus', { params, body: { status: 'released', reason: 'Cleared' } });
    expect(codesOf(await set('released'))).toEqual([]);
  });

  it('keep the date that is printed on them', async () => {
    const { bestBefore, version } = await lot();
    const correct = (date: string | null) =>
      bench.ask('correctLot', {
        params: { id: tins },
        body: { version, supplierLot: null, bestBefore: date, paid: null, reason: 'Misread' },
      });
    expect(bestBefore).not.toBeNull();
    expect(codesOf(await correct('2030-01-01'))).toEqual(['date-printed']);
    expect(codesOf(await correct(bestBefore))).toEqual([]);
  });

  it('say for what each movement was', async () => {
    const { movements } = await bench.get('getLot', { params: { id: tins } });
    const number = (await bench.get('getRun', { params: { id: run } })).number;
    expect(movements).toMatchObject([{ kind: 'made', change: '5', about: `filling run ${number}` }]);
  });
});
