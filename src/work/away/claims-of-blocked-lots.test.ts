import { describe, expect, it } from 'vitest';
import { makeAll } from '../../../test/workshop/build-making.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openFillingBench } from '../../../test/workshop/filling-bench.ts';
import { walkLots } from '../trace/walk-lots.ts';

const at = openFillingBench();

/** The oil of a mixture, weighed on a tablet that is away; its lot is blocked before the tablet is back. */
async function weighedBeforeTheRecall() {
  const wish = {
    revisionId: at.shop.mixtureRevision,
    purpose: 'sale' as const,
    markets: ['GB' as const],
    size: { by: 'grams' as const, grams: '100' },
  };
  const batch = await at.bench.get('startBatch', { body: { wish } });
  const screen = batch.screens.find((one) => one.kind === 'addition' && one.itemName === 'Lavender oil');
  if (screen?.kind !== 'addition') throw new Error('the oil is weighed in');
  const stamp = at.bench.stamp({ by: at.bench.people.second });
  const { position, lotId, scaleId } = screen;
  const body = { stamp, position, lotId: lotId ?? '', scaleId, actualGrams: '1' };
  const params = { id: batch.id };
  await at.bench.get('setLotStatus', {
    params: { id: lotId ?? '' },
    body: { status: 'blocked', reason: 'Called back by its supplier' },
  });
  expect(codesOf(await at.bench.ask('recordAddition', { params, body }))).toEqual([
    'lot-not-released-for-use',
  ]);
  const claim = await at.bench.get('keepClaim', {
    body: {
      stamp: at.bench.stamp({ by: at.bench.people.second }),
      entry: { id: stamp.id, route: 'recordAddition', params, body, at: stamp.at },
      problems: [{ code: 'lot-not-released-for-use', where: 'lot' }],
    },
  });
  return { batch, claim, lotId: lotId ?? '' };
}

describe('what went in before its lot was blocked', () => {
  it('goes on record once somebody says so: the trace reaches what was made of it, and its tins are stopped', async () => {
    const { batch, claim, lotId } = await weighedBeforeTheRecall();
    const body = { how: 'enter' as const, reason: 'It was in the bowl before the letter came.' };
    expect(codesOf(await at.bench.ask('answerClaim', { params: { id: claim.id }, body }))).toEqual([]);
    await makeAll(at.bench, batch.id);
    const params = { id: batch.id };
    const { lotId: bowl } = await at.bench.get('finishBatch', { params, body: { yieldGrams: '99' } });
    const { reached } = await walkLots(at.bench.context.storage.db, [lotId], 'forward');
    expect(reached.map((each) => each.lotId)).toContain(bowl);
    const run = await at.startRun(batch.id, { wanted: 1 });
    await at.fillAll(run.id, '46.45');
    const { checks } = await at.closeRun(run.id);
    expect(checks.find(({ check }) => check === 'lots')).toMatchObject({ isPassed: false });
  });
});
