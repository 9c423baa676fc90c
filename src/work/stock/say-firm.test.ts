import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  buildMakingBench,
  inGrams,
  type MakingBench,
  makeBatch,
} from '../../../test/workshop/build-making.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';

let bench: TestWorkshop;
let shop: MakingBench;
let base: string;
beforeEach(async () => {
  bench = await openTestWorkshop();
  shop = await buildMakingBench(bench);
  base = (await makeBatch(bench, inGrams(shop.baseRevision, '500'))).lotId ?? '';
});
afterEach(() => bench.close());

const lotOf = async (id: string) => (await bench.get('getLot', { params: { id } })).lot;
const firm = (remark = '', id = base) => bench.ask('sayFirm', { params: { id }, body: { remark } });
const set = (status: 'released' | 'blocked') =>
  bench.ask('setLotStatus', { params: { id: base }, body: { status, reason: 'Looked at it' } });

describe('the word that a base is firm', () => {
  it('releases it, from its shortest setting time on', async () => {
    expect(await lotOf(base)).toMatchObject({
      status: 'quarantine',
      firmFrom: '2026-11-26T20:05:00Z',
      firmTo: '2026-11-27T08:05:00Z',
    });
    bench.setClock('2026-11-26T20:05:00Z');
    expect(codesOf(await firm())).toEqual([]);
    expect((await lotOf(base)).status).toBe('released');
  });

  it('a second earlier needs a remark', async () => {
    bench.setClock('2026-11-26T20:04:59Z');
    expect(codesOf(await firm())).toEqual(['firm-too-early']);
    expect(codesOf(await firm('  '))).toEqual(['firm-too-early']);
    expect(codesOf(await firm('Cold cellar'))).toEqual([]);
    expect(await lotOf(base)).toMatchObject({ status: 'released', statusReason: 'Cold cellar' });
  });

  it('is said once, and sent twice counts once', async () => {
    bench.setClock('2026-11-27T09:00:00Z');
    const stamp = bench.stamp();
    const body = { stamp, remark: '' };
    await bench.get('sayFirm', { params: { id: base }, body });
    expect(await bench.get('sayFirm', { params: { id: base }, body })).toEqual({ id: base });
    expect(codesOf(await firm())).toEqual(['lot-firm-already']);
  });

  it('is not passed by with a change of standing', async () => {
    expect(codesOf(await set('released'))).toEqual(['lot-wants-firm-word']);
    await set('blocked');
    expect(codesOf(await set('released'))).toEqual(['lot-wants-firm-word']);
  });

  it('is refused for what is blocked, for goods, and where nothing is', async () => {
    await set('blocked');
    expect(codesOf(await firm('Firm'))).toEqual(['lot-not-to-be-firm']);
    expect(codesOf(await firm('Firm', shop.lots.shea))).toEqual(['lot-never-sets']);
    expect(codesOf(await firm('Firm', 'lost'))).toEqual(['thing-not-found']);
  });

  it('is said of what was blocked once it is back in quarantine, and leaves it there', async () => {
    bench.setClock('2026-11-27T09:00:00Z');
    await set('blocked');
    const body = { status: 'quarantine' as const, reason: 'It was another tub.' };
    await bench.get('setLotStatus', { params: { id: base }, body });
    expect(codesOf(await firm())).toEqual([]);
    expect((await lotOf(base)).status).toBe('quarantine');
    expect(codesOf(await set('released'))).toEqual([]);
  });

  it('does not release what somebody put back into quarantine, though it is looked at again', async () => {
    bench.setClock('2026-11-27T09:00:00Z');
    await firm();
    const body = { status: 'quarantine' as const, reason: 'Smells odd' };
    await bench.get('setLotStatus', { params: { id: base }, body });
    bench.setClock('2027-05-27T09:00:00Z');
    expect(codesOf(await firm('Looked at'))).toEqual([]);
    expect(await lotOf(base)).toMatchObject({ status: 'quarantine', statusReason: 'Smells odd' });
    expect(codesOf(await set('released'))).toEqual([]);
  });

  it('past the day until which it is kept says that it was looked at again', async () => {
    bench.setClock('2026-11-27T09:00:00Z');
    await firm();
    const { keepUntil } = await lotOf(base);
    expect(keepUntil).toBe('2027-05-26');
    bench.setClock('2027-05-26T09:00:00Z');
    expect(codesOf(await firm('Smells sweet'))).toEqual(['lot-firm-already']);
    bench.setClock('2027-05-27T09:00:00Z');
    expect(codesOf(await firm('Smells sweet'))).toEqual([]);
    expect(codesOf(await firm('Smells sweet'))).toEqual(['lot-firm-already']);
  });
});

describe('the day on which it is said', () => {
  it('is the day at the bench: half past midnight in summer is the day before in UTC', async () => {
    bench.setClock('2026-11-27T09:00:00Z');
    await firm();
    expect((await lotOf(base)).keepUntil).toBe('2027-05-26');
    // In London it is the 27th of May, British Summer Time: the base was looked at after its last day.
    bench.setClock('2027-05-26T23:30:00Z');
    expect(codesOf(await firm('Smells sweet'))).toEqual([]);
    expect(codesOf(await firm('Smells sweet'))).toEqual(['lot-firm-already']);
  });
});

describe('what is made here', () => {
  it('has no supplier and no price to correct', async () => {
    const facts = { version: 1, supplierLot: 'S-1', bestBefore: null, paid: '1', reason: 'Slip' };
    expect(codesOf(await bench.ask('correctLot', { params: { id: base }, body: facts }))).toEqual([
      'lot-not-bought',
      'lot-not-bought',
    ]);
  });

  it('is not given away before it may be sold, and is thrown away at any time', async () => {
    const move = (kind: 'gift' | 'binned' | 'own-use') =>
      bench.ask('moveLot', { params: { id: base }, body: { kind, quantity: '1', reason: '' } });
    expect(codesOf(await move('gift'))).toEqual(['lot-not-firm']);
    expect(codesOf(await move('own-use'))).toEqual([]);
    expect(codesOf(await move('binned'))).toEqual([]);
  });
});
