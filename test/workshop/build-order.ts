import { say } from '../../src/words/index.ts';
import { inTins, type MakingBench, makeBatch } from './build-making.ts';
import { clearArea } from './clear-area.ts';
import type { TestWorkshop } from './open-test-workshop.ts';

export interface OrderWish {
  readonly wantedBy?: string;
  readonly placedOn?: string;
  readonly customerId?: string | null;
}

/** An order of one product; answers its id. */
export async function buildOrder(
  bench: TestWorkshop,
  productId: string,
  units: number,
  { wantedBy = '2026-11-27', placedOn = '2026-11-20', customerId = null }: OrderWish = {},
): Promise<string> {
  const lines = [{ productId, units }];
  const body = { customerId, placedOn, wantedBy, note: '', lines };
  return (await bench.get('saveOrder', { body })).id;
}

/** Names and addresses, without which no label is complete. Invented. */
export async function nameWorkshop(bench: TestWorkshop): Promise<void> {
  const { version, details } = await bench.get('getWorkshop');
  if (!details) throw new Error('the workshop has begun');
  const responsibleGb = { name: 'Test Bench', address: '1 Bench Lane, Testham TT1 1TT, United Kingdom' };
  const responsibleEu = { name: 'Test Agents', address: '2 Quay, Testport BT99 9ZZ, Northern Ireland' };
  await bench.get('changeWorkshop', {
    body: { version, details: { ...details, responsibleGb, responsibleEu } },
  });
}

interface TinKind {
  readonly productId: string;
  readonly grossGrams: string;
  /** What its tin weighs. */
  readonly tareGrams?: string;
}

/** Tins filled from a fresh batch and closed, not decided yet. A firm base has to be there. Answers run and lot. */
export async function fillTins(
  bench: TestWorkshop,
  shop: MakingBench,
  units: number,
  { productId, grossGrams, tareGrams = '11.4' }: TinKind = { productId: shop.product, grossGrams: '46.50' },
): Promise<{ readonly run: string; readonly lot: string }> {
  const batch = await makeBatch(bench, inTins(shop.mixtureRevision, [{ productId, units }]));
  const run = await bench.get('startRun', {
    body: {
      batchId: batch.id,
      productId,
      wanted: units,
      scaleId: shop.scales.small,
      tareGrams,
    },
  });
  const params = { id: run.id };
  await clearArea(bench, run.id);
  for (let tin = 0; tin < units; tin += 1) {
    await bench.get('recordFill', {
      params,
      body: { grossGrams, tareGrams: null, sure: ['reading-same-as-last'] },
    });
  }
  const body = { retained: { keep: true as const, grams: '10' }, leftGrams: '0' };
  const closed = await bench.get('closeRun', { params, body });
  return { run: run.id, lot: closed.lotId ?? '' };
}

/** The same, released: tins that can be kept and sent. Answers their lot. */
export async function buildTins(
  bench: TestWorkshop,
  shop: MakingBench,
  units: number,
  kind?: TinKind,
): Promise<string> {
  const { run, lot } = await fillTins(bench, shop, units, kind);
  await bench.get('releaseRun', { params: { id: run }, body: { verdict: 'released', reason: '' } });
  return lot;
}

/** The answer to an order, as it is read on screen. */
export async function answerOf(bench: TestWorkshop, id: string) {
  const { promise, ...order } = await bench.get('getOrder', { params: { id } });
  return { ...promise, says: say(promise.sentence), order };
}
