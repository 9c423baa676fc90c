import { describe, expect, it } from 'vitest';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { FIVE, openFillingBench } from '../../../test/workshop/filling-bench.ts';

const at = openFillingBench();

/** A tablet brings back oil of the base once more, after the base was made. */
async function keepLateOil() {
  const base = (await at.bench.get('listBatches')).find(({ formulaKind }) => formulaKind === 'base');
  const batch = await at.bench.get('getBatch', { params: { id: base?.id ?? '' } });
  const oil = batch.screens.findLast((each) => each.kind === 'addition');
  if (oil?.kind !== 'addition') throw new Error('the oil is weighed in');
  const stamp = at.bench.stamp();
  const { position, lotId, scaleId } = oil;
  const body = { stamp, position, lotId, scaleId, actualGrams: '280' };
  const entry = { id: stamp.id, route: 'recordAddition', params: { id: batch.id }, body, at: stamp.at };
  const claim = await at.bench.get('keepClaim', {
    body: { entry, problems: [{ code: 'batch-not-open', where: 'id' }] },
  });
  return { claim, number: batch.number };
}

describe('what a tablet brought late of a base', () => {
  it('keeps the tins of it from their release until somebody has answered', async () => {
    const run = await at.startRun((await at.makeBowl()).id);
    await at.fillAll(run.id, ...FIVE);
    await at.closeRun(run.id);
    const body = { market: 'GB' as const, copies: 5 };
    await at.bench.get('printRunLabels', { params: { id: run.id }, body });
    const { claim, number } = await keepLateOil();
    const { checks } = await at.bench.get('getRun', { params: { id: run.id } });
    expect(checks.filter(({ isPassed }) => !isPassed)).toMatchObject([
      { check: 'claims', detail: { code: 'check-claims-open', parameters: { count: 1, which: number } } },
    ]);
    expect(codesOf(await at.release(run.id))).toEqual(['release-check-failed']);
    const answer = { how: 'aside' as const, reason: 'The same jug, entered twice' };
    await at.bench.get('answerClaim', { params: { id: claim.id }, body: answer });
    expect(codesOf(await at.release(run.id))).toEqual([]);
  });
});
