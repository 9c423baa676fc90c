import { describe, expect, it } from 'vitest';
import { buildProduct } from '../../../test/workshop/build-making.ts';
import { buildLot } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { FIVE, openFillingBench } from '../../../test/workshop/filling-bench.ts';
import { sayProblem } from '../../words/index.ts';

const at = openFillingBench();
const { makeBowl, startRun, fill, fillAll, close, closeRun, release, getLot } = at;

describe('striking and closing', () => {
  it('counts the same weight once, and lets two tabs fill side by side', async () => {
    const run = await startRun((await makeBowl()).id);
    const stamp = at.bench.stamp();
    const first = await fill(run.id, '46.45', { stamp });
    expect(await fill(run.id, '46.45', { stamp })).toEqual(first);
    await Promise.all([fill(run.id, '46.46'), fill(run.id, '46.47')]);
    const { weights } = await at.bench.get('getRun', { params: { id: run.id } });
    expect(weights.map((row) => row.number)).toEqual([1, 2, 3]);
  });

  it('does not close over a tin that is too light, until its weight is struck', async () => {
    const run = await startRun((await makeBowl()).id);
    await fillAll(run.id, '46.30', '46.45');
    expect(codesOf(await close(run.id))).toEqual(['light-tins-left']);
    const { weights } = await at.bench.get('getRun', { params: { id: run.id } });
    const params = { id: run.id };
    const body = { entryId: weights[0]?.entryId ?? '', reason: 'Refilled' };
    const struck = await at.bench.get('strikeFill', { params, body });
    expect(struck.weights[0]).toMatchObject({ isStruck: true, netGrams: '34.9' });
    expect(struck.summary).toMatchObject({ filled: 1, verdict: 'accept' });
    expect(codesOf(await at.bench.ask('strikeFill', { params, body }))).toEqual(['entry-struck-already']);
    await fillAll(run.id, '46.45');
    expect((await closeRun(run.id)).closing?.units).toBe(2);
  });

  it('refuses more in tins, sample and rest than the bowl held, and takes what the scales may be off', async () => {
    const run = await startRun((await makeBowl()).id);
    await fillAll(run.id, ...FIVE);
    // 189.8 - 175.22 - 10 = 4.58 g. Seven weighings of 0.01 g and 1 g for the yield on the coarsest scale: 5.65 g at most.
    expect(codesOf(await close(run.id, { leftGrams: '5.66' }))).toEqual(['bowl-held-less']);
    const closed = await closeRun(run.id, { leftGrams: '5.65' });
    expect(closed.closing).toMatchObject({ lostGrams: '0', leftGrams: '5.65' });
    expect(closed.bulkOnHandGrams).toBe('5.65');
  });

  it('names every kind of packaging of which too few are there', async () => {
    const run = await startRun((await makeBowl()).id);
    await fillAll(run.id, ...FIVE);
    const move = (id: string, quantity: string) =>
      at.bench.get('moveLot', { params: { id }, body: { kind: 'broken', quantity, reason: 'Fell' } });
    await move(at.shop.lots.lid, '36');
    const refusal = await close(run.id);
    expect(codesOf(refusal)).toEqual(['packaging-short']);
    if (!refusal.ok && refusal.problems[0])
      expect(sayProblem(refusal.problems[0]).says).toBe(
        'Of Lid there are 4 that may be used, and 5 are needed.',
      );
    await buildLot(at.bench, at.shop.materials.lid, { quantity: '10', bestBefore: null });
    const closed = await closeRun(run.id);
    const { lot } = await getLot(at.shop.lots.lid);
    expect([closed.closing?.units, lot.onHand]).toEqual([5, '0']);
  });

  it('closes without a tin: there is no lot, and nothing to release', async () => {
    const run = await startRun((await makeBowl()).id);
    const closed = await closeRun(run.id, { leftGrams: '179.8' });
    expect(closed).toMatchObject({ lotId: null, closing: { units: 0, lostGrams: '0' } });
    expect(codesOf(await release(run.id))).toEqual(['release-check-failed']);
    expect(codesOf(await release(run.id, 'rejected', 'Begun by mistake'))).toEqual([]);
  });

  it('takes no weights and no second closing afterwards', async () => {
    const run = await startRun((await makeBowl()).id);
    await fillAll(run.id, ...FIVE);
    await closeRun(run.id);
    expect(codesOf(await fill(run.id, '46.45'))).toEqual(['run-not-filling']);
    expect(codesOf(await close(run.id))).toEqual(['run-not-filling']);
  });

  it('judges by the average where the product says so: none below limit 2, few below limit 1', async () => {
    const product = await buildProduct(at.bench, at.shop.mixture, at.shop.materials, {
      name: 'Lavender butter, average',
      fillBasis: 'average',
      aimGrams: '35.3',
    });
    const run = await startRun((await makeBowl()).id, { productId: product });
    await fillAll(run.id, '45.90', '46.90', '46.90', '46.70', '39.99');
    const params = { id: run.id };
    const { weights, summary } = await at.bench.get('getRun', { params });
    expect(weights.map((row) => row.verdict)).toEqual(['inside', 'inside', 'inside', 'inside', 'too-light']);
    // Net 28.59 g lies below limit 2, 28.6 g.
    expect(summary).toMatchObject({ verdict: 'reject', belowLimit2: 1, decidedBy: 'below-limit-2' });
    expect(codesOf(await close(run.id))).toEqual(['light-tins-left']);
    await at.bench.get('strikeFill', {
      params,
      body: { entryId: weights[4]?.entryId ?? '', reason: 'Refilled' },
    });
    expect((await closeRun(run.id)).summary).toMatchObject({ verdict: 'accept', belowNominal: 1 });
  });
});
