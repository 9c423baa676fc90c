import { describe, expect, it } from 'vitest';
import { buildProduct, inGrams, makeBatch } from '../../../test/workshop/build-making.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openFillingBench } from '../../../test/workshop/filling-bench.ts';

const at = openFillingBench();
const { makeBowl, start, startRun, fillAll } = at;

describe('what may be filled', () => {
  it('refuses a base, a batch still being made, another formula and a scale that carries too little', async () => {
    const base = await makeBatch(at.bench, inGrams(at.shop.baseRevision, '100'));
    expect(codesOf(await start(base.id))).toEqual(['base-not-filled']);
    const making = await at.bench.get('startBatch', {
      body: { wish: inGrams(at.shop.mixtureRevision, '50') },
    });
    expect(codesOf(await start(making.id))).toEqual(['batch-not-made']);
    const bowl = await makeBowl();
    const huge = await buildProduct(at.bench, at.shop.mixture, at.shop.materials, {
      name: 'Tub',
      declaredGrams: '190',
    });
    expect(codesOf(await start(bowl.id, { productId: huge }))).toEqual(['scale-too-small']);
    expect(codesOf(await start(bowl.id, { productId: 'none' }))).toEqual(['thing-not-found']);
    const gone = await buildProduct(at.bench, at.shop.mixture, at.shop.materials, {
      name: 'Old',
      isWithdrawn: true,
    });
    expect(codesOf(await start(bowl.id, { productId: gone }))).toEqual(['product-withdrawn']);
  });

  it('refuses a bowl that was blocked', async () => {
    const bowl = await makeBowl();
    await at.bench.get('setLotStatus', {
      params: { id: bowl.lotId ?? '' },
      body: { status: 'blocked', reason: 'Grainy' },
    });
    expect(codesOf(await start(bowl.id))).toEqual(['lot-not-released-for-use']);
  });

  it('judges old tins by the scale as it was', async () => {
    const run = await startRun((await makeBowl()).id);
    await fillAll(run.id, '46.41');
    const before = await at.bench.get('getRun', { params: { id: run.id } });
    const { scales } = await at.bench.get('getWorkshop');
    const small = scales.find((scale) => scale.id === at.shop.scales.small);
    if (!small) throw new Error('the small scale is there');
    const { repeatability: _measured, check: _checked, ...typed } = small;
    await at.bench.get('saveScale', { body: { scale: { ...typed, readabilityGrams: '0.1' } } });
    const after = await at.bench.get('getRun', { params: { id: run.id } });
    expect(after.weights).toEqual(before.weights);
    expect(after.summary).toEqual(before.summary);
  });
});
