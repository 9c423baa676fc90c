import { describe, expect, it } from 'vitest';
import { buildProduct, buildScale } from '../../../test/workshop/build-making.ts';
import { buildPackaging } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openFillingBench } from '../../../test/workshop/filling-bench.ts';

const at = openFillingBench();
const { makeBowl, startRun } = at;

/**
 * A scale of class III with e = 0.1 g: 0.5 e up to 500 e (50 g), 1 e up to 2000 e (200 g), 1.5 e beyond; twice that in
 * service (OIML R 76-1 table 6; SI 1995/1907 Schedule 2). Two readings rounded to 0.1 g add 0.1 g.
 */
const buildClassed = () =>
  buildScale(at.bench, 'Classed scale', '600', '0.1', {
    accuracyClass: 'III',
    verificationIntervalGrams: '0.1',
  });

describe('the error of the scale in a filling run', () => {
  it('is that of the load with the tin, not of the declared content alone', async () => {
    const batch = await makeBowl();
    const scaleId = await buildClassed();
    const errorWith = async (tareGrams: string) =>
      (await startRun(batch.id, { scaleId, tareGrams, sure: ['tare-unlike'] })).scale.worstErrorGrams;
    expect(await errorWith('11.4'), '46.4 g').toBe('0.2');
    expect(await errorWith('15'), 'just 50 g').toBe('0.2');
    expect(await errorWith('15.000001'), 'a microgram above').toBe('0.3');
    expect(await errorWith('165'), 'just 200 g').toBe('0.3');
    expect(await errorWith('165.000001'), 'a microgram above').toBe('0.4');
  });

  it('raises the aim by as much', async () => {
    const scaleId = await buildClassed();
    const bowl = await makeBowl();
    const typed = { scaleId, tareGrams: '30' };
    expect(codesOf(await at.start(bowl.id, typed)), 'the tin is known as 11.4 g').toEqual(['tare-unlike']);
    const run = await startRun(bowl.id, { ...typed, sure: ['tare-unlike'] });
    expect(run.aimGrams).toBe('35.3');
  });

  it('where nobody knows the tin yet is that of the largest load', async () => {
    const unknownTin = await buildPackaging(at.bench, { name: 'Odd tin', tareGrams: null, brimMl: null });
    const product = await buildProduct(at.bench, at.shop.mixture, at.shop.materials, {
      name: 'Lavender butter, odd tin',
      tinId: unknownTin,
    });
    const batch = await makeBowl();
    const scaleId = await buildClassed();
    const run = await startRun(batch.id, { scaleId, productId: product, tareGrams: null });
    expect(run.scale.worstErrorGrams).toBe('0.4');
    const zeroed = await startRun(batch.id, { scaleId, productId: product, tareGrams: '0' });
    expect(zeroed.scale.worstErrorGrams).toBe('0.2');
  });
});
