import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  buildMakingBench,
  inGrams,
  inTins,
  type MakingBench,
  makeBatch,
  makeFirmBase,
} from '../../test/workshop/build-making.ts';
import { clearArea } from '../../test/workshop/clear-area.ts';
import { codesOf } from '../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../test/workshop/open-test-workshop.ts';

let bench: TestWorkshop;
beforeEach(async () => {
  bench = await openTestWorkshop();
});
afterEach(() => bench.close());

const MINUTE_MS = 60_000;
const minutesFromNow = (minutes: number): string =>
  new Date(Date.parse(bench.now()) + minutes * MINUTE_MS).toISOString();
const stampAt = (at: string) => bench.stamp({ at });

describe('the time of an entry', () => {
  const addPlace = (at: string) =>
    bench.ask('savePlace', { body: { stamp: stampAt(at), name: `Loft ${at}`, kind: 'shelf' } });

  it('may lie back, since an entry may come late', async () => {
    expect(codesOf(await addPlace(minutesFromNow(-3 * 24 * 60)))).toEqual([]);
  });

  it('may be ahead by five minutes, as clocks are, and by no more', async () => {
    expect(codesOf(await addPlace(minutesFromNow(5)))).toEqual([]);
    const late = new Date(Date.parse(bench.now()) + 5 * MINUTE_MS + 1).toISOString();
    expect(await addPlace(late)).toMatchObject({
      problems: [{ code: 'entry-in-future', where: 'stamp.at', found: late, allowed: bench.now() }],
    });
  });

  it('is told by instants, whatever the offset it is written with', async () => {
    expect(codesOf(await addPlace('2026-11-26T20:05:00+12:00'))).toEqual([]);
    expect(codesOf(await addPlace('2026-11-26T08:05:00-01:00'))).toEqual(['entry-in-future']);
  });
});

describe('an entry about something', () => {
  let shop: MakingBench;
  beforeEach(async () => {
    shop = await buildMakingBench(bench);
  });

  it('is not from before that was begun, but for two clocks that differ', async () => {
    const wish = inGrams(shop.baseRevision, '800');
    const batch = await bench.get('startBatch', { body: { wish } });
    const params = { id: batch.id };
    const [screen] = batch.screens.filter((one) => one.kind === 'addition');
    if (screen?.kind !== 'addition') throw new Error('a base begins with an addition');
    const { position, scaleId, targetGrams } = screen;
    const weigh = (at: string) =>
      bench.ask('recordAddition', {
        params,
        body: { stamp: stampAt(at), position, lotId: screen.lotId ?? '', scaleId, actualGrams: targetGrams },
      });
    expect(await weigh(minutesFromNow(-11))).toMatchObject({
      problems: [
        {
          code: 'entry-before-its-thing',
          found: minutesFromNow(-11),
          parameters: { thing: `batch ${batch.number}` },
        },
      ],
    });
    const abandoned = { stamp: stampAt(minutesFromNow(-11)), reason: 'Fell down' };
    expect(codesOf(await bench.ask('abandonBatch', { params, body: abandoned }))).toEqual([
      'entry-before-its-thing',
    ]);
    expect(codesOf(await weigh(minutesFromNow(-10)))).toEqual([]);
  });

  it('is not a release from before the tins were filled, nor a filling from before the batch was made', async () => {
    await makeFirmBase(bench, shop, '800');
    const batch = await makeBatch(
      bench,
      inTins(shop.mixtureRevision, [{ productId: shop.product, units: 1 }]),
    );
    const start = (at: string) =>
      bench.ask('startRun', {
        body: {
          stamp: stampAt(at),
          batchId: batch.id,
          productId: shop.product,
          wanted: 1,
          scaleId: shop.scales.small,
          tareGrams: '11.4',
        },
      });
    expect(codesOf(await start(minutesFromNow(-60)))).toEqual(['entry-before-its-thing']);
    const run = await start(bench.now());
    if (!run.ok) throw new Error(codesOf(run).join(', '));
    const params = { id: run.value.id };
    await clearArea(bench, run.value.id);
    const fill = (at: string) =>
      bench.ask('recordFill', { params, body: { stamp: stampAt(at), grossGrams: '46.6', tareGrams: null } });
    expect(codesOf(await fill(minutesFromNow(-60)))).toEqual(['entry-before-its-thing']);
    expect(codesOf(await fill(bench.now()))).toEqual([]);
    const closing = { retained: { keep: true as const, grams: '10' }, leftGrams: '0' };
    await bench.get('closeRun', { params, body: closing });
    const release = {
      stamp: stampAt(minutesFromNow(-60)),
      verdict: 'rejected' as const,
      reason: 'Not whipped',
    };
    expect(codesOf(await bench.ask('releaseRun', { params, body: release }))).toEqual([
      'entry-before-its-thing',
    ]);
  });
});

describe('what may be used', () => {
  it('is judged at a start by this computer’s day: an old date on the entry opens no lot that has ended', async () => {
    const shop = await buildMakingBench(bench);
    await makeFirmBase(bench, shop, '800');
    const batch = await makeBatch(
      bench,
      inTins(shop.mixtureRevision, [{ productId: shop.product, units: 1 }]),
    );
    const then = bench.now();
    // The lots of the bench end in 2027.
    bench.setClock('2028-03-01T09:00:00Z');
    const stamp = () => stampAt(then);
    const wish = inGrams(shop.baseRevision, '100');
    expect(codesOf(await bench.ask('startBatch', { body: { stamp: stamp(), wish } }))).toContain(
      'item-short',
    );
    const run = {
      batchId: batch.id,
      productId: shop.product,
      wanted: 1,
      scaleId: shop.scales.small,
      tareGrams: '11.4',
    };
    const refused = await bench.ask('startRun', { body: { stamp: stamp(), ...run } });
    expect(codesOf(refused)).toEqual(['lot-expired']);
    const gift = { quantity: '10', kind: 'gift' as const, reason: 'A friend' };
    const given = await bench.ask('moveLot', {
      params: { id: batch.lotId ?? '' },
      body: { stamp: stamp(), ...gift },
    });
    expect(codesOf(given)).toEqual(['lot-expired']);
  });

  it('is not firm earlier because the entry is dated later', async () => {
    const shop = await buildMakingBench(bench);
    const base = await makeBatch(bench, inGrams(shop.baseRevision, '800'));
    const say = (at: string, remark: string) =>
      bench.ask('sayFirm', { params: { id: base.lotId ?? '' }, body: { stamp: stampAt(at), remark } });
    expect(codesOf(await say(minutesFromNow(5), ''))).toEqual(['firm-too-early']);
    expect(codesOf(await say(minutesFromNow(-2 * 24 * 60), 'Firm.'))).toEqual(['entry-before-its-thing']);
  });
});
