import { describe, expect, it } from 'vitest';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openFillingBench } from '../../../test/workshop/filling-bench.ts';

const at = openFillingBench();

/** A tin that was weighed while the tablet was away, with what was said yes to there. */
async function keepFill(runId: string, grossGrams: string, sure: readonly string[] = []) {
  const stamp = at.bench.stamp();
  const body = { stamp, grossGrams, tareGrams: null, refillOf: null, sure };
  const entry = { id: stamp.id, route: 'recordFill', params: { id: runId }, body, at: stamp.at };
  const problems = [{ code: 'reading-same-as-last', where: 'grossGrams' }];
  return at.bench.get('keepClaim', { body: { entry, problems } });
}
const enter = (id: string, sure: readonly string[]) =>
  at.bench.ask('answerClaim', {
    params: { id },
    body: { how: 'enter', reason: 'It was another tin.', sure: [...sure] },
  });

describe('a tin that a tablet weighed while it was away', () => {
  it('is entered once each of its questions was said yes to', async () => {
    const run = await at.startRun((await at.makeBowl()).id);
    expect(codesOf(await at.fill(run.id, '106.45', { sure: ['net-far-above-label'] }))).toEqual([]);
    const claim = await keepFill(run.id, '106.45');
    expect(codesOf(await enter(claim.id, []))).toEqual(['net-far-above-label']);
    expect(codesOf(await enter(claim.id, ['net-far-above-label']))).toEqual(['reading-same-as-last']);
    expect(codesOf(await enter(claim.id, ['net-far-above-label', 'reading-same-as-last']))).toEqual([]);
    const { weights } = await at.bench.get('getRun', { params: { id: run.id } });
    expect(weights.map(({ sure }) => sure)[1]).toEqual(['net-far-above-label', 'reading-same-as-last']);
  });

  it('keeps what was said yes to at the tablet', async () => {
    const run = await at.startRun((await at.makeBowl()).id);
    await at.fillAll(run.id, '46.45');
    const claim = await keepFill(run.id, '46.45', ['reading-same-as-last']);
    expect(codesOf(await enter(claim.id, []))).toEqual([]);
  });
});
