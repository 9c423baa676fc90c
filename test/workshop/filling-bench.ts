import { afterEach, beforeEach, expect } from 'vitest';
import {
  buildMakingBench,
  inGrams,
  inTins,
  type MakingBench,
  makeAll,
  makeBatch,
  makeFirmBase,
} from './build-making.ts';
import { nameWorkshop } from './build-order.ts';
import { clearArea } from './clear-area.ts';
import { codesOf } from './codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from './open-test-workshop.ts';

/** Five fills in a tin of 11.4 g, each a little above the aim of 35.01 g. */
export const FIVE = ['46.41', '46.45', '46.50', '46.42', '46.44'] as const;

/** A bench with a firm base for each test, and the hands that start, fill, close and release runs on it. */
export function openFillingBench() {
  let bench: TestWorkshop;
  let shop: MakingBench;
  beforeEach(async () => {
    bench = await openTestWorkshop();
    shop = await buildMakingBench(bench);
    await nameWorkshop(bench);
    await makeFirmBase(bench, shop, '800');
  });
  afterEach(() => bench.close());

  const makeBowl = (units = 5, purpose: 'sale' | 'trial' = 'sale') =>
    makeBatch(bench, inTins(shop.mixtureRevision, [{ productId: shop.product, units }], { purpose }));
  const start = (batchId: string, more: object = {}) =>
    bench.ask('startRun', {
      body: {
        batchId,
        productId: shop.product,
        wanted: 5,
        scaleId: shop.scales.small,
        tareGrams: '11.4',
        ...more,
      },
    });
  async function startRun(batchId: string, more: object = {}) {
    const run = await start(batchId, more);
    if (!run.ok) throw new Error(`refused: ${codesOf(run).join(', ')}`);
    return clearArea(bench, run.value.id);
  }
  /** Round figures repeat: that it is another tin is said unless a test asks otherwise. */
  const fill = (id: string, grossGrams: string, more: object = {}) =>
    bench.ask('recordFill', {
      params: { id },
      body: { grossGrams, tareGrams: null, sure: ['reading-same-as-last'], ...more },
    });
  async function fillAll(id: string, ...gross: readonly string[]): Promise<void> {
    for (const each of gross) expect(codesOf(await fill(id, each))).toEqual([]);
  }
  const close = (id: string, more: object = {}) =>
    bench.ask('closeRun', {
      params: { id },
      body: { retained: { keep: true, grams: '10' }, leftGrams: '0', ...more },
    });
  async function closeRun(id: string, more: object = {}) {
    const closed = await close(id, more);
    if (!closed.ok) throw new Error(`refused: ${codesOf(closed).join(', ')}`);
    return closed.value;
  }
  /** A bowl with so much oil in it, whatever the sheet asked for, filled into one tin. */
  async function brewWith(scentGrams: string) {
    const batch = await bench.get('startBatch', { body: { wish: inGrams(shop.mixtureRevision, '100') } });
    const screen = batch.screens.find((one) => one.kind === 'addition' && one.itemName === 'Lavender oil');
    if (screen?.kind !== 'addition') throw new Error('the oil is weighed in');
    const body = {
      position: screen.position,
      lotId: screen.lotId ?? '',
      scaleId: screen.scaleId,
      actualGrams: scentGrams,
      deviation: { what: 'Too much oil', why: 'The bottle slipped' },
      isReadingSure: true,
      isOverKnown: true,
    };
    const params = { id: batch.id };
    await bench.get('recordAddition', { params, body });
    await makeAll(bench, batch.id);
    await bench.get('finishBatch', { params, body: { yieldGrams: '99' } });
    const run = await startRun(batch.id, { wanted: 1 });
    await fillAll(run.id, '46.45');
    return closeRun(run.id);
  }
  const release = (id: string, verdict: 'released' | 'rejected' = 'released', reason = '') =>
    bench.ask('releaseRun', { params: { id }, body: { verdict, reason } });
  const getLot = (id: string | null) => bench.get('getLot', { params: { id: id ?? '' } });

  return {
    get bench() {
      return bench;
    },
    get shop() {
      return shop;
    },
    makeBowl,
    start,
    startRun,
    fill,
    fillAll,
    close,
    closeRun,
    brewWith,
    release,
    getLot,
  };
}
