import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildMakingBench, type MakingBench, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { buildOrder, fillTins, nameWorkshop } from '../../../test/workshop/build-order.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { say } from '../../words/index.ts';

/** Lavender oil has to be named in the European Union and Northern Ireland from 1 August 2026 (Regulation (EU) 2023/1545). */
let bench: TestWorkshop;
let shop: MakingBench;
let tins: { readonly run: string; readonly lot: string };

const UNTIL =
  'may be placed on the market until 31 July 2026; what was placed by then may be sold on until 31 July 2028';

/** Two tins whose labels were printed on 30 July 2026. */
beforeEach(async () => {
  bench = await openTestWorkshop({ now: '2026-07-30T08:00:00Z' });
  shop = await buildMakingBench(bench);
  await nameWorkshop(bench);
  await makeFirmBase(bench, shop, '800');
  tins = await fillTins(bench, shop, 2);
  await print('NI');
});
afterEach(() => bench.close());

const print = (market: 'GB' | 'NI', copies = 2) =>
  bench.get('printRunLabels', {
    params: { id: tins.run },
    body: { market, copies, pieces: [], sheetId: null, firstPosition: 1 },
  });
const release = () =>
  bench.ask('releaseRun', { params: { id: tins.run }, body: { verdict: 'released', reason: '' } });
const ageChecks = async () =>
  (await bench.get('getRun', { params: { id: tins.run } })).checks.filter(({ check }) =>
    check.startsWith('label-age'),
  );
const order = (placedOn: string) => buildOrder(bench, shop.product, 2, { placedOn, wantedBy: '2026-12-01' });
const send = (id: string) => bench.ask('dispatchOrder', { params: { id }, body: { tracking: '' } });
const notesOf = async (id: string) =>
  (await bench.get('getOrder', { params: { id } })).labelNotes.map((note) => say(note));

describe('a release of tins labelled before the newer law', () => {
  it('goes on the last day, and says the two last days', async () => {
    bench.setClock('2026-07-31T20:00:00Z');
    const [told, ...others] = await ageChecks();
    expect(others).toEqual([]);
    expect(told).toMatchObject({ check: 'label-age-NI', isPassed: true, isToSee: true });
    expect(told && say(told.detail)).toContain('Lavandula Oil/Extract');
    expect(told && say(told.detail)).toContain(UNTIL);
    expect(codesOf(await release())).toEqual([]);
  });

  it('is held from the day after, until labels are printed anew for all tins', async () => {
    bench.setClock('2026-07-31T23:00:00Z'); // Midnight in London: the first of August.
    const [told] = await ageChecks();
    expect(told).toMatchObject({ isPassed: false });
    expect(told && say(told.detail)).toContain('Print them anew and stick them over the old ones');
    expect(await release()).toMatchObject({
      problems: [{ code: 'release-check-failed', where: 'label-age-NI' }],
    });
    await print('NI', 1);
    expect(codesOf(await release())).toEqual(['release-check-failed']);
    await print('NI', 1);
    expect(await ageChecks()).toEqual([]);
    expect(codesOf(await release())).toEqual([]);
  });
});

describe('sending tins labelled before the newer law', () => {
  beforeEach(async () => {
    bench.setClock('2026-07-31T09:00:00Z');
    await release();
  });

  it('goes on the last day, with the two last days beside the order', async () => {
    const id = await order('2026-07-31');
    expect(await notesOf(id)).toHaveLength(1);
    expect((await notesOf(id))[0]).toContain(UNTIL);
    expect(codesOf(await send(id))).toEqual([]);
  });

  it('goes later too where they were released and agreed upon in time', async () => {
    const id = await order('2026-07-31');
    bench.setClock('2026-08-01T09:00:00Z');
    expect((await notesOf(id))[0]).toMatch(/31 July 2028\.$/);
    expect(codesOf(await send(id))).toEqual([]);
  });

  it('is held for whoever orders later, and the promise counts them no more', async () => {
    bench.setClock('2026-08-01T09:00:00Z');
    const id = await order('2026-08-01');
    expect((await notesOf(id))[0]).toContain('nothing shows that these were placed by then');
    expect((await bench.get('getOrder', { params: { id } })).promise.tinsReady).toBe(0);
    expect(codesOf(await send(id))).toEqual(['labels-by-older-law']);
    expect(codesOf(await bench.ask('reserveOrder', { params: { id } }))).toEqual(['labels-by-older-law']);
  });

  it('lets go of tins that were kept where another comes to have them', async () => {
    const early = await order('2026-07-31');
    await bench.get('reserveOrder', { params: { id: early } });
    bench.setClock('2026-08-01T09:00:00Z');
    const { version, lines, customerId } = await bench.get('getOrder', { params: { id: early } });
    const changed = { customerId, placedOn: '2026-08-01', wantedBy: '2026-12-01', note: '' };
    const wish = lines.map(({ productId, units }) => ({ productId, units }));
    await bench.get('saveOrder', { body: { id: early, version, ...changed, lines: wish } });
    expect(codesOf(await send(early))).toEqual(['labels-by-older-law']);
  });

  it('goes once they have new labels, and for Great Britain alone as they are', async () => {
    bench.setClock('2026-08-01T09:00:00Z');
    const id = await order('2026-08-01');
    const product = (await bench.get('listProducts')).find((row) => row.id === shop.product);
    if (!product) throw new Error('the bench sells it');
    const { version, details } = product;
    await bench.get('saveProduct', {
      body: { id: product.id, version, details: { ...details, markets: ['GB'] } },
    });
    expect(await notesOf(id)).toEqual([]);
    await bench.get('saveProduct', { body: { id: product.id, version: version + 1, details } });
    expect(await notesOf(id)).toHaveLength(1);
    await print('NI');
    expect(await notesOf(id)).toEqual([]);
    expect(codesOf(await send(id))).toEqual([]);
  });

  it('is refused by hand too: as a gift, or to a stall', async () => {
    bench.setClock('2026-08-01T09:00:00Z');
    const gift = await bench.ask('moveLot', {
      params: { id: tins.lot },
      body: { kind: 'gift', quantity: '1', reason: 'A neighbour', fromPlaceId: bench.places.shelf },
    });
    expect(codesOf(gift)).toEqual(['labels-by-older-law']);
  });
});
