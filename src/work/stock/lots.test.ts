import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildIngredient, buildLot, buildPackaging } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';

let bench: TestWorkshop;
let fat: string;
let tin: string;
beforeEach(async () => {
  bench = await openTestWorkshop();
  fat = await buildIngredient(bench, { name: 'Shea butter', supplier: 'Usual Fats' });
  tin = await buildPackaging(bench);
});
afterEach(() => bench.close());

const read = async (id: string) => bench.get('getLot', { params: { id } });

describe('the opening count', () => {
  const found = { supplierLot: null, bestBefore: null };

  it('weighs a tub, gross less tare, exactly', async () => {
    const { id } = await bench.get('countAtOpening', {
      body: { materialId: fat, ...found, grossGrams: '1262.35', tareGrams: '112.4' },
    });
    const { lot, movements, places } = await read(id);
    // 1262.35 - 112.4 is 1149.95: no binary fraction may show.
    expect(lot).toMatchObject({
      number: 'L-0001',
      onHand: '1149.95',
      placeIds: [bench.places.shelf],
      status: 'released',
      foundAtOpening: true,
      supplier: '',
      supplierLot: null,
      bestBefore: null,
      paid: null,
      paidFor: null,
      since: '2026-11-26',
      isExpired: false,
    });
    expect(movements).toMatchObject([
      { kind: 'counted', change: '1149.95', unit: 'g', by: 'Ada Quill', place: 'Shelf' },
    ]);
    expect(places).toEqual([{ placeId: bench.places.shelf, name: 'Shelf', onHand: '1149.95' }]);
  });

  it('counts pieces', async () => {
    const { id } = await bench.get('countAtOpening', { body: { materialId: tin, ...found, pieces: 14 } });
    expect((await read(id)).lot).toMatchObject({ unit: 'pieces', onHand: '14' });
  });

  it('keeps what is known: lot, date and price', async () => {
    const { id } = await bench.get('countAtOpening', {
      body: { materialId: tin, supplierLot: 'T-9', bestBefore: '2028-01-31', pieces: 100, paid: '30.50' },
    });
    expect((await read(id)).lot).toMatchObject({
      supplierLot: 'T-9',
      bestBefore: '2028-01-31',
      paid: '30.50',
      paidFor: '100',
      foundAtOpening: true,
    });
  });

  it('takes a tub that is all tare to the last microgram, and refuses one that holds nothing or less', async () => {
    const count = (grossGrams: string) =>
      bench.ask('countAtOpening', { body: { materialId: fat, ...found, grossGrams, tareGrams: '100' } });
    expect(codesOf(await count('100.000001'))).toEqual([]);
    expect(codesOf(await count('100'))).toEqual(['nothing-found']);
    expect(codesOf(await count('99.999999'))).toEqual(['gross-below-tare']);
  });

  it('refuses to weigh pieces, to count a tub, to guess a tare, and a comma', async () => {
    const ask = (body: { materialId: string; grossGrams?: string; tareGrams?: string; pieces?: number }) =>
      bench.ask('countAtOpening', { body: { ...found, ...body } });
    expect(codesOf(await ask({ materialId: tin, grossGrams: '10', tareGrams: '0' }))).toEqual([
      'weighed-not-counted',
    ]);
    expect(codesOf(await ask({ materialId: fat, pieces: 3 }))).toEqual(['counted-not-weighed']);
    expect(codesOf(await ask({ materialId: fat, grossGrams: '10' }))).toEqual(['field-missing']);
    expect(codesOf(await ask({ materialId: fat, tareGrams: '10' }))).toEqual(['field-missing']);
    expect(codesOf(await ask({ materialId: tin }))).toEqual(['field-missing']);
    expect(codesOf(await ask({ materialId: fat, grossGrams: '1,5', tareGrams: '0' }))).toEqual([
      'comma-for-point',
    ]);
    expect(codesOf(await ask({ materialId: 'lost', pieces: 3 }))).toEqual(['thing-not-found']);
  });

  it('sent twice is counted once', async () => {
    const body = { stamp: bench.stamp(), materialId: tin, ...found, pieces: 14 };
    const first = await bench.get('countAtOpening', { body });
    expect(await bench.get('countAtOpening', { body })).toEqual(first);
    expect((await read(first.id)).lot.onHand).toBe('14');
  });
});

describe('goods that come in', () => {
  it('are accepted under the next number of the workshop, from the usual supplier', async () => {
    const first = await read(await buildLot(bench, fat));
    const second = await read(await buildLot(bench, fat));
    expect([first.lot.number, second.lot.number]).toEqual(['L-0001', 'L-0002']);
    expect(first.lot).toMatchObject({
      onHand: '1000',
      status: 'released',
      supplier: 'Usual Fats',
      supplierLot: 'S-1',
      bestBefore: '2027-11-26',
      paid: '12.00',
      paidFor: '1000',
      foundAtOpening: false,
    });
    expect(first.movements).toMatchObject([{ kind: 'received', change: '1000' }]);
  });

  it('go on counting after the ten-thousandth', async () => {
    const id = await buildLot(bench, fat);
    await bench.context.storage.db
      .updateTable('lot')
      .set({ number: 'L-9999' })
      .where('id', '=', id)
      .execute();
    const next = await buildLot(bench, fat);
    expect((await read(next)).lot.number).toBe('L-10000');
    expect((await read(await buildLot(bench, fat))).lot.number).toBe('L-10001');
  });

  it('are held in quarantine where somebody wants to look', async () => {
    const { id } = await bench.get('receiveGoods', {
      body: {
        materialId: fat,
        supplierLot: 'S-1',
        bestBefore: null,
        quantity: '500',
        accept: false,
        reason: 'Seal broken',
      },
    });
    expect((await read(id)).lot).toMatchObject({ status: 'quarantine', statusReason: 'Seal broken' });
  });

  it('may come in on the last day of their date, and not a day later', async () => {
    const receive = (bestBefore: string, accept = true) =>
      bench.ask('receiveGoods', {
        body: { materialId: fat, supplierLot: null, bestBefore, quantity: '1', accept },
      });
    expect(codesOf(await receive('2026-11-26'))).toEqual([]);
    expect(codesOf(await receive('2026-11-25'))).toEqual(['received-past-date']);
    expect(codesOf(await receive('2026-11-25', false))).toEqual([]);
  });

  it('come in by the clock of the workshop', async () => {
    bench.setClock('2026-06-30T23:30:00Z');
    expect((await read(await buildLot(bench, fat))).lot.since).toBe('2026-07-01');
  });

  it('are refused with nothing, a part of a tin, too fine a mass, and in a place for samples', async () => {
    const ask = (materialId: string, quantity: string, placeId?: string) =>
      bench.ask('receiveGoods', {
        body: {
          materialId,
          supplierLot: null,
          bestBefore: null,
          quantity,
          accept: true,
          ...(placeId && { placeId }),
        },
      });
    expect(codesOf(await ask(fat, '0'))).toEqual(['value-not-above']);
    expect(codesOf(await ask(fat, '-5'))).toEqual(['value-not-above']);
    expect(codesOf(await ask(tin, '1.5'))).toEqual(['pieces-not-whole']);
    expect(codesOf(await ask(fat, '0.0000001'))).toEqual(['mass-too-fine']);
    expect(codesOf(await ask(fat, '1000000.000001'))).toEqual(['value-too-large']);
    expect(codesOf(await ask(fat, '1,200'))).toEqual(['comma-for-point']);
    expect(codesOf(await ask(fat, '1', bench.places.retained))).toEqual(['retained-not-for-goods']);
    expect(codesOf(await ask(fat, '1', 'lost'))).toEqual(['thing-not-found']);
  });
});

describe('correcting a lot', () => {
  const facts = { supplierLot: 'S-2', bestBefore: '2027-01-31', paid: '13.00', reason: 'Misread the label' };

  it('keeps both sides in the chain, with the reason', async () => {
    const id = await buildLot(bench, fat);
    await bench.get('correctLot', { params: { id }, body: { version: 1, ...facts } });
    expect((await read(id)).lot).toMatchObject({
      supplierLot: 'S-2',
      bestBefore: '2027-01-31',
      paid: '13.00',
      version: 2,
    });
    const entry = await bench.context.storage.db
      .selectFrom('entry')
      .selectAll()
      .where('kind', '=', 'lot-corrected')
      .executeTakeFirstOrThrow();
    expect(JSON.parse(entry.payload)).toEqual({
      before: { supplierLot: 'S-1', bestBefore: '2027-11-26', paid: '12.00', quantity: '1000' },
      after: { supplierLot: 'S-2', bestBefore: '2027-01-31', paid: '13.00', quantity: '1000' },
      reason: 'Misread the label',
      shortened: [],
    });
  });

  it('leaves the mark of the opening count', async () => {
    const { id } = await bench.get('countAtOpening', {
      body: { materialId: tin, supplierLot: null, bestBefore: null, pieces: 5 },
    });
    await bench.get('correctLot', { params: { id }, body: { version: 1, ...facts } });
    expect((await read(id)).lot).toMatchObject({ foundAtOpening: true, supplierLot: 'S-2' });
  });

  it('is refused from the second of two tabs, without a reason, and where nothing is', async () => {
    const id = await buildLot(bench, fat);
    const correct = (params: { id: string }, body: typeof facts) =>
      bench.ask('correctLot', { params, body: { version: 1, ...body } });
    await correct({ id }, facts);
    expect(await correct({ id }, { ...facts, supplierLot: 'S-3' })).toMatchObject({
      ok: false,
      problems: [{ code: 'changed-meanwhile', parameters: { holds: 'S-2, 2027-01-31, 13.00' } }],
    });
    expect(codesOf(await correct({ id }, { ...facts, reason: ' ' }))).toEqual(['value-too-small']);
    expect(codesOf(await correct({ id: 'lost' }, facts))).toEqual(['thing-not-found']);
  });
});

describe('the standing of a lot', () => {
  const set = (
    id: string,
    status: 'quarantine' | 'released' | 'rejected' | 'blocked',
    reason = 'Looked at it',
  ) => bench.ask('setLotStatus', { params: { id }, body: { status, reason } });

  it('changes only along its ways', async () => {
    const ways = {
      quarantine: { released: true, rejected: true, blocked: true, quarantine: false },
      released: { quarantine: true, blocked: true, rejected: true, released: false },
      blocked: { released: true, quarantine: true, rejected: true, blocked: false },
      rejected: { quarantine: true, released: false, blocked: false, rejected: false },
    } as const;
    for (const [from, targets] of Object.entries(ways)) {
      for (const [to, isAllowed] of Object.entries(targets)) {
        const id = await buildLot(bench, fat, { accept: false });
        if (from !== 'quarantine') await set(id, from as 'blocked');
        const codes = codesOf(await set(id, to as 'blocked'));
        expect(codes, `${from} to ${to}`).toEqual(isAllowed ? [] : ['status-not-from-there']);
      }
    }
  });

  it('needs a reason for everything but a plain release', async () => {
    const id = await buildLot(bench, fat, { accept: false });
    expect(codesOf(await set(id, 'blocked', ''))).toEqual(['status-reason-missing']);
    expect(codesOf(await set(id, 'rejected', ''))).toEqual(['status-reason-missing']);
    expect(codesOf(await set(id, 'released', ''))).toEqual([]);
    expect(codesOf(await set(id, 'quarantine', ''))).toEqual(['status-reason-missing']);
  });

  it('shows the last reason, and the chain keeps every one', async () => {
    const id = await buildLot(bench, fat);
    await set(id, 'blocked', 'Smells odd');
    await set(id, 'released', 'Compared with a fresh one');
    expect((await read(id)).lot).toMatchObject({
      status: 'released',
      statusReason: 'Compared with a fresh one',
    });
    const kept = await bench.context.storage.db.selectFrom('lot_status').selectAll().execute();
    expect(kept.map((row) => row.status)).toEqual(['released', 'blocked', 'released']);
  });

  it('is not changed where nothing is', async () => {
    expect(codesOf(await set('lost', 'blocked'))).toEqual(['thing-not-found']);
  });
});
