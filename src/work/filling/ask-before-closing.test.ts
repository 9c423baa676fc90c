import { describe, expect, it } from 'vitest';
import { buildProduct } from '../../../test/workshop/build-making.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { FIVE, openFillingBench } from '../../../test/workshop/filling-bench.ts';

const at = openFillingBench();
const { makeBowl, startRun, fill, fillAll, close } = at;
const read = (id: string) => at.bench.get('getRun', { params: { id } });

/** 35 g by the average way: limits 31.8 and 28.6 g. */
async function fillOnAverage(...gross: readonly string[]) {
  const productId = await buildProduct(at.bench, at.shop.mixture, at.shop.materials, {
    name: 'On average',
    fillBasis: 'average',
    aimGrams: '35',
  });
  const run = await startRun((await makeBowl(8)).id, { productId });
  await fillAll(run.id, ...gross);
  return run;
}

describe('what is asked before a run is closed for good', () => {
  it('refuses more tins below limit 1 than may lie there, until one is filled up', async () => {
    // 28.6 g, and four of 36.9 g: the mean is right, and none of five may lie below limit 1.
    const run = await fillOnAverage('40.00', '48.30', '48.30', '48.30', '48.30');
    expect((await read(run.id)).summary).toMatchObject({ tooLight: 1, verdict: 'reject' });
    const refused = await close(run.id);
    expect(!refused.ok && refused.problems[0]).toMatchObject({
      code: 'light-tins-many',
      found: 1,
      allowed: '31.8',
      parameters: { many: 1, numbers: '1' },
    });
    const refillOf = (await read(run.id)).weights[0]?.entryId ?? null;
    expect(codesOf(await fill(run.id, '46.50', { refillOf }))).toEqual([]);
    expect(codesOf(await close(run.id))).toEqual([]);
    const { checks } = await read(run.id);
    expect(checks.find(({ check }) => check === 'weights')?.isPassed).toBe(true);
  });

  it('asks about a mean below the label', async () => {
    // 34.9 g in each of five: half a gram is missing.
    const run = await fillOnAverage('46.30', '46.31', '46.30', '46.29', '46.30');
    const asked = await close(run.id);
    expect(!asked.ok && asked.problems[0]).toMatchObject({ code: 'mean-below-label', found: '0.5' });
    expect(codesOf(await close(run.id, { sure: ['mean-below-label'] }))).toEqual([]);
  });

  it('asks about a tin that was put aside and not counted', async () => {
    const run = await startRun((await makeBowl()).id);
    await fillAll(run.id, ...FIVE);
    const { weights } = await read(run.id);
    const body = { entryId: weights[0]?.entryId ?? '', reason: 'A hair in it', fate: 'binned' as const };
    await at.bench.get('strikeFill', { params: { id: run.id }, body });
    expect(codesOf(await close(run.id))).toEqual(['tins-put-aside']);
    expect(codesOf(await close(run.id, { spoiltTins: 1 }))).toEqual([]);
  });

  it('asks where another run is filled from the bowl that would be empty by the book', async () => {
    const batch = await makeBowl();
    const first = await startRun(batch.id, { wanted: 2 });
    await fillAll(first.id, '46.45', '46.46');
    const second = await startRun(batch.id, { productId: at.shop.smallProduct, tareGrams: '8.2' });
    expect(codesOf(await close(first.id))).toEqual(['bowl-filled-elsewhere']);
    expect(codesOf(await close(first.id, { leftGrams: '105' }))).toEqual([]);
    expect((await read(second.id)).bowlLeftGrams).toBe('105');
  });
});
