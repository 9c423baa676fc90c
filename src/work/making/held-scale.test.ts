import { describe, expect, it } from 'vitest';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { checkScale, giveCheckWeight, holdScale } from '../../../test/workshop/hold-scale.ts';
import { openMakingBench, type Started } from '../../../test/workshop/making-bench.ts';
import { sayProblem } from '../../words/index.ts';

const at = openMakingBench();
const deviation = { what: 'Weighed on the middle scale', why: 'The other one was in use' };
const reread = ({ id }: Started) => at.bench.get('getBatch', { params: { id } });
const middle = () => at.shop.scales.middle;

/** A base that was planned while its scale still passed. */
async function startHeld(): Promise<Started> {
  const batch = await at.startBase();
  expect(at.additionAt(batch, 0).scaleId).toBe(middle());
  await holdScale(at.bench, middle());
  return batch;
}

describe('weighing in on a scale that did not pass its check', () => {
  it('is refused, with what the scale showed and what to do', async () => {
    const batch = await startHeld();
    const refused = await at.weigh(batch, 0, '520');
    expect(codesOf(refused)).toEqual(['scale-held']);
    const [wrong] = refused.ok ? [] : refused.problems;
    expect(wrong && sayProblem(wrong).says).toBe(
      'Middle scale did not pass its check: it showed 105 g for its 100 g weight, and weighs nothing until it passes.',
    );
    expect(await at.onHand(at.shop.lots.shea)).toBe('2000');
    expect((await at.weigh(batch, 0, '520', { scaleId: at.shop.scales.bench })).ok).toBe(true);
  });

  it('goes in where it is known, and said what was done and why; neither alone is enough', async () => {
    const batch = await startHeld();
    expect(codesOf(await at.weigh(batch, 0, '520', { deviation }))).toEqual(['scale-held']);
    expect(codesOf(await at.weigh(batch, 0, '520', { isScaleHeldKnown: true }))).toEqual(['scale-held']);
    expect((await at.weigh(batch, 0, '520', { deviation, isScaleHeldKnown: true })).ok).toBe(true);
    expect((await reread(batch)).deviations).toMatchObject([deviation]);
  });

  it('is free again once it passes, and without any scale named', async () => {
    const batch = await startHeld();
    await checkScale(at.bench, middle(), '100');
    expect((await at.weigh(batch, 0, '520')).ok).toBe(true);
    await checkScale(at.bench, middle(), '105');
    expect((await at.weigh(batch, 1, '280', { scaleId: null })).ok).toBe(true);
  });

  it('is not asked for by what is weighed because the batch was made larger', async () => {
    const batch = await at.startBase();
    const params = { id: batch.id };
    await at.weigh(batch, 0, '559', { deviation });
    await holdScale(at.bench, middle());
    const { upon } = await at.bench.get('offerResize', { params, body: { position: 0, moreGrams: '0' } });
    const resized = await at.bench.get('resizeBatch', { params, body: { position: 0, upon } });
    expect(at.additionAt(resized, 1)).toMatchObject({ scaleId: at.shop.scales.bench, targetGrams: '301' });
  });

  it('goes by the moment of the weighing, not by when the entry comes', async () => {
    await giveCheckWeight(at.bench, middle());
    const batch = await at.startBase();
    const stampAt = (time: string) => ({ stamp: at.bench.stamp({ at: `2026-11-26T${time}:00Z` }) });
    at.bench.setClock('2026-11-26T09:00:00Z');
    await checkScale(at.bench, middle(), '105');
    at.bench.setClock('2026-11-26T10:00:00Z');
    await checkScale(at.bench, middle(), '100');
    expect(codesOf(await at.weigh(batch, 0, '520', stampAt('09:59')))).toEqual(['scale-held']);
    expect(codesOf(await at.weigh(batch, 0, '520', stampAt('09:00')))).toEqual(['scale-held']);
    expect((await at.weigh(batch, 0, '520', stampAt('08:59'))).ok).toBe(true);
    expect((await at.weigh(batch, 1, '280', stampAt('10:00'))).ok).toBe(true);
  });

  it('by a tablet that was away is not lost: it asks, and is entered once somebody says that it is so', async () => {
    const batch = await startHeld();
    const { lotId, scaleId } = at.additionAt(batch, 0);
    const stamp = at.bench.stamp();
    const entry = {
      id: stamp.id,
      route: 'recordAddition',
      params: { id: batch.id },
      body: { stamp, position: 0, lotId, scaleId, actualGrams: '520' },
      at: stamp.at,
    };
    const problems = [{ code: 'scale-held', where: 'scaleId', found: 'Middle scale' }];
    const claim = await at.bench.get('keepClaim', { body: { entry, problems } });
    const answer = (sure: string[]) =>
      at.bench.ask('answerClaim', {
        params: { id: claim.id },
        body: { how: 'enter', reason: 'Weighed again: it was right', sure },
      });
    expect(codesOf(await answer([]))).toEqual(['scale-held']);
    expect((await answer(['scale-held'])).ok).toBe(true);
    expect(at.additionAt(await reread(batch), 0).inGrams).toBe('520');
  });
});

it('by hand another scale is taken, or it passes first', async () => {
  await holdScale(at.bench, middle());
  const weigh = (scaleId: string | null) =>
    at.bench.ask('weighWithoutRecipe', {
      body: { batchId: null, lotId: at.shop.lots.shea, scaleId, actualGrams: '100' },
    });
  expect(codesOf(await weigh(middle()))).toEqual(['scale-must-pass']);
  expect((await weigh(at.shop.scales.small)).ok).toBe(true);
});
