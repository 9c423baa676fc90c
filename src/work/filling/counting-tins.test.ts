import { describe, expect, it } from 'vitest';
import { buildProduct, inTins, makeBatch } from '../../../test/workshop/build-making.ts';
import { openFillingBench } from '../../../test/workshop/filling-bench.ts';

const at = openFillingBench();
const { makeBowl, startRun, fillAll } = at;
const summaryOf = async (id: string) => (await at.bench.get('getRun', { params: { id } })).summary;

describe('mean and giveaway of a run', () => {
  it('are of the tins that count: one too light, to be put aside, is left out', async () => {
    const run = await startRun((await makeBowl()).id);
    await fillAll(run.id, '46.45', '46.55', '40.00');
    // (35.05 + 35.15) / 2 = 35.1 g; the third, 28.6 g, is too light to stay.
    expect(await summaryOf(run.id)).toMatchObject({
      filled: 3,
      counting: 2,
      meanGrams: '35.1',
      giveawayGrams: '0.1',
      verdict: 'reject',
      belowNominal: 1,
    });
  });

  it('are of nothing while every tin is too light', async () => {
    const run = await startRun((await makeBowl()).id);
    await fillAll(run.id, '40.00');
    expect(await summaryOf(run.id)).toMatchObject({
      filled: 1,
      counting: 0,
      meanGrams: null,
      giveawayGrams: null,
    });
  });

  it('by the average way leave out only what lies below limit 2', async () => {
    const product = await buildProduct(at.bench, at.shop.mixture, at.shop.materials, {
      name: 'Lavender butter, average',
      fillBasis: 'average',
    });
    const batch = await makeBatch(
      at.bench,
      inTins(at.shop.mixtureRevision, [{ productId: product, units: 5 }]),
    );
    const run = await startRun(batch.id, { productId: product });
    // Limits of 35 g: 31.8 and 28.6 g. Nets of 36, 30 and 28.5 g.
    await fillAll(run.id, '47.40', '41.40', '39.90');
    expect(await summaryOf(run.id)).toMatchObject({ filled: 3, counting: 2, meanGrams: '33' });
    // Of five none may lie below limit 1: both light ones are still to be filled.
    expect(await summaryOf(run.id)).toMatchObject({ tooLight: 2, stillToFill: 4 });
    const { weights, sentence, plannedSampleGrams } = await at.bench.get('getRun', {
      params: { id: run.id },
    });
    expect(weights.map(({ lightBy }) => lightBy)).toEqual([null, 'limit-1', 'limit-2']);
    expect(sentence).toMatchObject({ code: 'run-has-light-tins', parameters: { count: 2, stillToFill: 4 } });
    expect(plannedSampleGrams).toBe('10');
  });
});
