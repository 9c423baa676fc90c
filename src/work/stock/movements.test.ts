import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildIngredient, buildLot, buildPackaging } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';

let bench: TestWorkshop;
let fat: string;
let stall: string;
beforeEach(async () => {
  bench = await openTestWorkshop();
  fat = await buildLot(bench, await buildIngredient(bench), { quantity: '100' });
  stall = (await bench.get('savePlace', { body: { name: 'Harbour market', kind: 'stall' } })).id;
});
afterEach(() => bench.close());

const read = (id: string) => bench.get('getLot', { params: { id } });
type Kind = 'tester' | 'gift' | 'own-use' | 'broken' | 'binned' | 'moved';
const move = (
  id: string,
  kind: Kind,
  quantity: string,
  more: { fromPlaceId?: string; toPlaceId?: string } = {},
) => bench.ask('moveLot', { params: { id }, body: { kind, quantity, reason: '', ...more } });

describe('a count', () => {
  const weigh = (
    grossGrams: string,
    more: { placeId?: string; stamp?: ReturnType<typeof bench.stamp> } = {},
  ) =>
    bench.ask('countLot', {
      params: { id: fat },
      body: { grossGrams, tareGrams: '12.5', reason: 'Weighed', isGainSure: true, ...more },
    });

  it('books the difference to the ledger, up or down, with its reason', async () => {
    expect(await weigh('110')).toMatchObject({ ok: true, value: { difference: '-2.5', onHand: '97.5' } });
    expect(await weigh('112.000001')).toMatchObject({
      ok: true,
      value: { difference: '2.000001', onHand: '99.500001' },
    });
    expect((await read(fat)).movements[0]).toMatchObject({
      kind: 'counted',
      change: '2.000001',
      reason: 'Weighed',
    });
  });

  it('of an empty tub books everything away', async () => {
    expect(await weigh('12.5')).toMatchObject({ ok: true, value: { difference: '-100', onHand: '0' } });
    expect((await read(fat)).places).toEqual([]);
  });

  it('that agrees is booked as nought, so that it is known when somebody looked', async () => {
    expect(await weigh('112.5')).toMatchObject({ ok: true, value: { difference: '0', onHand: '100' } });
    expect((await read(fat)).movements[0]).toMatchObject({ kind: 'counted', change: '0' });
  });

  it('of a tub that is used up finds more of it on the shelf', async () => {
    await weigh('12.5');
    expect(await weigh('13.5')).toMatchObject({ ok: true, value: { difference: '1', onHand: '1' } });
  });

  it('sent twice is booked once and answers the same', async () => {
    const stamp = bench.stamp();
    const first = await weigh('110', { stamp });
    expect(await weigh('110', { stamp })).toEqual(first);
    expect((await read(fat)).lot.onHand).toBe('97.5');
  });

  it('says which place it is of where the lot stands in several', async () => {
    await move(fat, 'moved', '40', { toPlaceId: stall });
    expect(codesOf(await weigh('52.5'))).toEqual(['place-not-said']);
    expect(await weigh('52.5', { placeId: stall })).toMatchObject({
      ok: true,
      value: { difference: '0', onHand: '100' },
    });
    expect(codesOf(await weigh('52.5', { placeId: 'lost' }))).toEqual(['thing-not-found']);
  });

  it('is refused with a gross below the tare, and without a reason', async () => {
    expect(codesOf(await weigh('12.499999'))).toEqual(['gross-below-tare']);
    const silent = { grossGrams: '20', tareGrams: '1', reason: '' };
    expect(codesOf(await bench.ask('countLot', { params: { id: fat }, body: silent }))).toEqual([
      'value-too-small',
    ]);
    expect(
      codesOf(await bench.ask('countLot', { params: { id: 'lost' }, body: { ...silent, reason: 'R' } })),
    ).toEqual(['thing-not-found']);
  });
});

describe('a movement by hand', () => {
  it('takes from the lot and says what is left', async () => {
    expect(await move(fat, 'binned', '0.000001')).toEqual({ ok: true, value: { onHand: '99.999999' } });
    expect((await read(fat)).movements[0]).toMatchObject({
      kind: 'binned',
      change: '-0.000001',
      place: 'Shelf',
    });
  });

  it('takes the whole lot, and not a microgram more', async () => {
    expect(await move(fat, 'broken', '100.000001')).toMatchObject({
      ok: false,
      problems: [{ code: 'lot-too-small', where: 'L-0001', found: '100.000001', allowed: '100' }],
    });
    expect(await move(fat, 'broken', '100')).toEqual({ ok: true, value: { onHand: '0' } });
    expect(codesOf(await move(fat, 'broken', '0.000001'))).toEqual(['lot-too-small']);
  });

  it('to another place leaves what there is', async () => {
    expect(await move(fat, 'moved', '30', { toPlaceId: stall })).toEqual({
      ok: true,
      value: { onHand: '100' },
    });
    expect((await read(fat)).places).toEqual([
      { placeId: bench.places.shelf, name: 'Shelf', onHand: '70' },
      { placeId: stall, name: 'Harbour market', onHand: '30' },
    ]);
  });

  it('never takes more from a place than stands there', async () => {
    await move(fat, 'moved', '30', { toPlaceId: stall });
    expect(await move(fat, 'binned', '31', { fromPlaceId: stall })).toMatchObject({
      ok: false,
      problems: [
        { code: 'place-too-small', found: '31', allowed: '30', parameters: { place: 'Harbour market' } },
      ],
    });
    expect(codesOf(await move(fat, 'binned', '30', { fromPlaceId: stall }))).toEqual([]);
  });

  it('says where it goes exactly where something is moved', async () => {
    expect(codesOf(await move(fat, 'moved', '1'))).toEqual(['field-missing']);
    expect(codesOf(await move(fat, 'moved', '1', { toPlaceId: bench.places.shelf }))).toEqual([
      'moved-nowhere',
    ]);
    expect(codesOf(await move(fat, 'moved', '1', { toPlaceId: 'lost' }))).toEqual(['thing-not-found']);
    expect(codesOf(await move(fat, 'binned', '1', { toPlaceId: stall }))).toEqual(['only-moves-arrive']);
  });

  it('among retained samples leaves the shelf', async () => {
    await move(fat, 'moved', '10', { toPlaceId: bench.places.retained });
    expect((await read(fat)).lot.onHand).toBe('90');
    expect(codesOf(await move(fat, 'binned', '10', { fromPlaceId: bench.places.retained }))).toEqual([]);
    expect((await read(fat)).lot.onHand).toBe('90');
  });

  it('is allowed of what is past its date or rejected: it has to go somewhere', async () => {
    await bench.get('setLotStatus', { params: { id: fat }, body: { status: 'rejected', reason: 'Rancid' } });
    bench.setClock('2028-01-01T09:00:00Z');
    expect((await read(fat)).lot.isExpired).toBe(true);
    expect(codesOf(await move(fat, 'binned', '100'))).toEqual([]);
  });

  it('is refused with a part of a piece, nothing, less than nothing, and a comma', async () => {
    const tin = await buildLot(bench, await buildPackaging(bench), { quantity: '10' });
    expect(codesOf(await move(tin, 'broken', '0.5'))).toEqual(['pieces-not-whole']);
    expect(codesOf(await move(tin, 'broken', '0'))).toEqual(['value-not-above']);
    expect(codesOf(await move(tin, 'broken', '-1'))).toEqual(['value-not-above']);
    expect(codesOf(await move(tin, 'broken', '1,5'))).toEqual(['comma-for-point']);
    expect(codesOf(await move('lost', 'broken', '1'))).toEqual(['thing-not-found']);
  });

  it('sent twice is booked once', async () => {
    const body = { stamp: bench.stamp(), kind: 'gift' as const, quantity: '10', reason: '' };
    await bench.get('moveLot', { params: { id: fat }, body });
    expect(await bench.get('moveLot', { params: { id: fat }, body })).toEqual({ onHand: '90' });
  });
});
