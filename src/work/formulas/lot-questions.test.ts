import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  buildMakingBench,
  inGrams,
  type MakingBench,
  makeBatch,
  makeFirmBase,
} from '../../../test/workshop/build-making.ts';
import { nameWorkshop } from '../../../test/workshop/build-order.ts';
import { buildLot } from '../../../test/workshop/build-stock.ts';
import { clearArea } from '../../../test/workshop/clear-area.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { say } from '../../words/index.ts';

let bench: TestWorkshop;
let shop: MakingBench;
beforeEach(async () => {
  bench = await openTestWorkshop();
  await nameWorkshop(bench);
  shop = await buildMakingBench(bench);
  await makeFirmBase(bench, shop, '800');
});
afterEach(() => bench.close());

const LINALOOL = { name: 'Linalool', cas: '78-70-6', typicalPercent: '30' };
/** No table knows it: invented, as are all figures here. */
const strange = (typicalPercent = '0.4') => ({ name: 'Wondrol', typicalPercent });
const certify = (
  lotId: string,
  reference: string,
  constituents: { name: string; cas?: string; typicalPercent: string }[] = [LINALOOL, strange()],
) =>
  bench.get('saveLotCertificate', {
    params: { id: lotId },
    body: { reference, datedOn: '2026-11-03', details: { constituents, isComplete: true } },
  });
const check = () =>
  bench.get('checkRevision', { params: { id: shop.mixtureRevision }, query: { markets: 'GB,NI' } });
const start = () => bench.ask('startBatch', { body: { wish: inGrams(shop.mixtureRevision, '100') } });
type Question = Awaited<ReturnType<typeof check>>['lotQuestions'][number];
const decide = ({ key, upon }: Question, verdict: 'accepted' | 'refused' | 'open-again', more: object = {}) =>
  bench.ask('decideUnknown', {
    params: { id: shop.mixtureRevision },
    body: { key, upon, verdict, reason: 'The supplier wrote what it is.', ...more },
  });
async function only(): Promise<Question> {
  const { lotQuestions } = await check();
  const [question] = lotQuestions;
  if (!question || lotQuestions.length > 1) throw new Error(`${lotQuestions.length} questions of lots`);
  return question;
}

describe('what only the certificate of a lot lists and no table knows', () => {
  it('is asked on the check of the formula, with material and lot, and the formula itself stays answered', async () => {
    expect((await check()).lotQuestions).toEqual([]);
    await certify(shop.lots.scent, 'L-1');
    const { answer, open, lotQuestions } = await check();
    expect(answer).toBe('yes');
    expect(open.map(({ substance }) => substance)).not.toContain('Wondrol');
    expect(lotQuestions).toMatchObject([
      { substance: 'Wondrol', material: 'Lavender oil', markets: ['GB', 'NI'], decided: null },
    ]);
    expect(say((await only()).why)).toContain('Wondrol');
  });

  it('holds a batch until a named person decided it there, and lets it be made and released then', async () => {
    await certify(shop.lots.scent, 'L-1');
    expect(codesOf(await start())).not.toEqual([]);
    expect(codesOf(await decide(await only(), 'accepted'))).toEqual([]);
    expect((await only()).decided).toMatchObject({ verdict: 'accepted', by: 'Ada Quill' });
    expect(codesOf(await start())).toEqual([]);
  });

  it('refused there, stops the batch', async () => {
    await certify(shop.lots.scent, 'L-1');
    await decide(await only(), 'refused');
    expect(codesOf(await start())).not.toEqual([]);
  });

  it('is decided for every lot with the same figures, and asked again of other ones', async () => {
    await certify(shop.lots.scent, 'L-1');
    await decide(await only(), 'accepted');
    const second = await buildLot(bench, shop.materials.scent, { quantity: '50', bestBefore: '2027-01-31' });
    await certify(second, 'L-2');
    expect((await only()).lots).toHaveLength(2);
    expect(codesOf(await start())).toEqual([]);
    await certify(second, 'L-3', [LINALOOL, strange('0.5')]);
    const { lotQuestions } = await check();
    expect(lotQuestions.map(({ decided }) => decided?.verdict ?? null)).toEqual(['accepted', null]);
    // The second lot ends first and is taken first.
    expect(codesOf(await start())).not.toEqual([]);
  });

  it('can be taken back, and is not decided twice', async () => {
    await certify(shop.lots.scent, 'L-1');
    await decide(await only(), 'accepted');
    const asked = await only();
    expect(codesOf(await decide(asked, 'refused'))).toEqual(['decided-already']);
    const corrects = { corrects: asked.decided?.entryId };
    expect(codesOf(await decide(asked, 'open-again', corrects))).toEqual([]);
    expect((await only()).decided).toBe(null);
    expect(codesOf(await start())).not.toEqual([]);
  });

  it('cannot be decided once the paper is another', async () => {
    await certify(shop.lots.scent, 'L-1');
    const asked = await only();
    await certify(shop.lots.scent, 'L-2', [LINALOOL]);
    expect(codesOf(await decide(asked, 'accepted'))).toEqual(['unknown-not-here']);
  });

  it('is decided for a batch that was weighed before the paper came, too', async () => {
    const batch = await makeBatch(bench, inGrams(shop.mixtureRevision, '100'));
    await certify(shop.lots.scent, 'L-1');
    const run = await bench.get('startRun', {
      body: {
        batchId: batch.id,
        productId: shop.product,
        wanted: 1,
        scaleId: shop.scales.small,
        tareGrams: '11.4',
      },
    });
    const params = { id: run.id };
    await clearArea(bench, run.id);
    await bench.get('recordFill', { params, body: { grossGrams: '46.45', tareGrams: null } });
    await bench.get('closeRun', { params, body: { retained: { keep: true, grams: '10' }, leftGrams: '0' } });
    const release = () => bench.ask('releaseRun', { params, body: { verdict: 'released', reason: '' } });
    expect(codesOf(await release())).toContain('release-check-failed');
    await decide(await only(), 'accepted');
    expect(codesOf(await release())).toEqual([]);
  });
});
