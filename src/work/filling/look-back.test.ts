import { describe, expect, it } from 'vitest';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { FIVE, openFillingBench } from '../../../test/workshop/filling-bench.ts';

const at = openFillingBench();

async function releasedRun() {
  const run = await at.startRun((await at.makeBowl()).id);
  await at.fillAll(run.id, ...FIVE);
  const closed = await at.closeRun(run.id);
  const body = { market: 'GB' as const, copies: 5 };
  await at.bench.get('printRunLabels', { params: { id: run.id }, body });
  expect(codesOf(await at.release(run.id))).toEqual([]);
  return closed;
}
/** Invented figures of an oil that is 1 % of the butter. */
const measure = (name: string, cas: string, typicalPercent: string) =>
  at.bench.get('saveLotCertificate', {
    params: { id: at.shop.lots.scent },
    body: {
      reference: `of ${name}`,
      datedOn: null,
      details: { constituents: [{ name, cas, typicalPercent }], isComplete: false },
    },
  });
const papers = async () => (await at.bench.get('getMorning')).papers;
const means = async () =>
  (await at.bench.get('listLotCertificates', { params: { id: at.shop.lots.scent } })).means;

describe('what is learnt after a release', () => {
  // Below 0.0002 % in what stays on the skin: Regulation (EC) No 1223/2009, Annex III entry 102.
  it('puts tins over a limit: the morning calls them back until they are blocked, and the lot says so', async () => {
    const run = await releasedRun();
    at.bench.setClock('2026-11-27T08:00:00Z');
    await measure('Methyl Eugenol', '93-15-2', '0.5');
    expect(await papers()).toMatchObject([
      { state: 'stop', title: 'LB-0001, Lavender butter', action: { to: `/shelf/lots/${run.lotId}` } },
    ]);
    expect(await means()).toMatchObject([
      { code: 'lot-shakes-tins', parameters: { tins: 'LB-0001', units: 5 } },
    ]);
    const body = { status: 'blocked' as const, reason: 'Too much methyl eugenol in the oil' };
    await at.bench.get('setLotStatus', { params: { id: run.lotId ?? '' }, body });
    expect(await papers()).toEqual([]);
    expect(await means()).toEqual([]);
  });

  it('asks for a name that their label lacks', async () => {
    await releasedRun();
    at.bench.setClock('2026-11-27T08:00:00Z');
    await measure('Geraniol', '106-24-1', '3');
    expect(await means()).toMatchObject([
      { code: 'lot-shakes-tins', parameters: { reasons: expect.stringContaining('printed') } },
    ]);
  });

  it('changes nothing where the lot keeps every limit, or was told before the release', async () => {
    await measure('Geraniol', '106-24-1', '3');
    await releasedRun();
    at.bench.setClock('2026-11-27T08:00:00Z');
    expect(await papers()).toEqual([]);
    await measure('Geraniol', '106-24-1', '2.9');
    expect(await papers()).toEqual([]);
  });

  it('calls tins back where a weighing that came late brings their batch over a limit', async () => {
    const run = await releasedRun();
    at.bench.setClock('2026-11-27T08:00:00Z');
    const batch = await at.bench.get('getBatch', { params: { id: run.batchId } });
    const scent = batch.screens.find((each) => each.kind === 'addition' && each.itemName === 'Lavender oil');
    if (scent?.kind !== 'addition') throw new Error('the oil is weighed in');
    const stamp = { ...at.bench.stamp(), at: '2026-11-26T08:30:00Z' };
    const { position, lotId, scaleId } = scent;
    const body = { stamp, position, lotId, scaleId, actualGrams: '5' };
    const entry = { id: stamp.id, route: 'recordAddition', params: { id: run.batchId }, body, at: stamp.at };
    const problems = [{ code: 'batch-not-open', where: 'id' }];
    const claim = await at.bench.get('keepClaim', { body: { entry, problems } });
    expect(await papers()).toEqual([]);
    const answer = { how: 'enter' as const, reason: 'It went in too', sure: ['weighed-over-limits'] };
    expect(codesOf(await at.bench.ask('answerClaim', { params: { id: claim.id }, body: answer }))).toEqual(
      [],
    );
    expect(await papers()).toMatchObject([{ state: 'stop', title: 'LB-0001, Lavender butter' }]);
  });
});
