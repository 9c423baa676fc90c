import { describe, expect, it } from 'vitest';
import { inGrams, inTins, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { checkScale, holdScale } from '../../../test/workshop/hold-scale.ts';
import { openMakingBench } from '../../../test/workshop/making-bench.ts';
import { say } from '../../words/index.ts';

const at = openMakingBench();
const plan = (grams: string, revision = at.shop.mixtureRevision) =>
  at.bench.get('planBatch', { body: inGrams(revision, grams) });

const failCheck = (scaleId: string) => holdScale(at.bench, scaleId);

describe('what a plan says of its weighings', () => {
  it('has nothing too small where the scales weigh all of it, and names the smallest batch and its tins', async () => {
    await makeFirmBase(at.bench, at.shop, '800');
    const wish = inTins(at.shop.mixtureRevision, [{ productId: at.shop.product, units: 5 }]);
    const { weighing, batchGrams } = await at.bench.get('planBatch', { body: wish });
    // 1 % of scent, 5 % out: 2 x 0.41 x 0.01 / 0.05 = 0.164, shown 0.17 g: batches from 17 g.
    expect(weighing).toMatchObject({ leftOut: [], small: [], smallestBatchGrams: '17' });
    expect(Number(batchGrams)).toBeGreaterThan(17);
    // 17 g fill no tin, and no tin is named.
    expect(weighing.smallestTins).toEqual([]);
  });

  it('counts with a measured repeatability, once there is one', async () => {
    await makeFirmBase(at.bench, at.shop, '800');
    const body = {
      weightGrams: '100',
      readings: ['100', '100.1', '100', '99.9', '100', '100.1', '100', '99.9', '100', '100'],
    };
    await at.bench.get('recordScaleTest', { params: { id: at.shop.scales.small }, body });
    const { weighing } = await plan('100');
    // s = 0.0667 g: 2 s / 0.05 = 2.67 g on the small scale, 2 x 0.041 / 0.05 = 1.64, shown 1.7 g on the middle one.
    expect(weighing.smallestBatchGrams).toBe('170');
    expect(weighing.small).toHaveLength(1);
    expect(say(weighing.small[0]?.says ?? { code: '', parameters: {} })).toBe(
      '1 g may be 5 % out: the scales here weigh 1.7 g and more so.',
    );
  });

  it('leaves out a scale that did not pass its check, says so, and takes it back once it passes', async () => {
    await makeFirmBase(at.bench, at.shop, '800');
    await failCheck(at.shop.scales.small);
    const held = await plan('100');
    expect(held.weighing.leftOut).toEqual([{ id: at.shop.scales.small, name: 'Small scale' }]);
    expect(held.rows.map(({ scaleName }) => scaleName)).toEqual(['Middle scale', 'Middle scale']);
    expect(held.weighing.small[0]?.ways.map((each) => say(each))).toEqual([
      'Small scale would weigh it well enough: it has to pass its check first.',
      'A larger batch: 170 g and more.',
    ]);
    await checkScale(at.bench, at.shop.scales.small, '100');
    expect((await plan('100')).weighing).toMatchObject({ leftOut: [], small: [] });
  });

  it('allows an oil less where its limit is near than a butter', async () => {
    await makeFirmBase(at.bench, at.shop, '800');
    await failCheck(at.shop.scales.small);
    await failCheck(at.shop.scales.middle);
    // Step 1 g: within 5 % that is 17 g, within 2 % 41 g.
    const { weighing } = await plan('100');
    expect(weighing.small.map(({ itemName }) => itemName)).toEqual(['Lavender oil']);
    expect(weighing.small[0]?.ways.map(({ code }) => code)).toEqual(['way-finer-held', 'way-larger']);
  });

  it('weighs in parts what no scale holds that weighs it well enough, with the error of all of them', async () => {
    await failCheck(at.shop.scales.bench);
    await failCheck(at.shop.scales.middle);
    const { weighing, rows } = await plan('500', at.shop.baseRevision);
    expect(weighing.small.map(({ itemName }) => itemName)).toEqual(['Shea butter']);
    expect(say(weighing.small[0]?.says ?? { code: '', parameters: {} })).toBe(
      '325 g may be 2 % out: Small scale is good enough for that, but holds 200 g at most.',
    );
    // Two readings of 0.01 g, each half a step off, twice.
    expect(weighing.small[0]?.ways.map((each) => say(each))).toEqual([
      'In parts: 2 times 162.5 g on Small scale. Each may be 0.01 g out, all together 0.02 g.',
      'Bench scale would weigh it well enough: it has to pass its check first.',
    ]);
    expect(rows[0]?.warning && say(rows[0].warning)).toBe(
      'Weigh it in parts: 2 times 162.5 g on Small scale. All together they may be 0.02 g out.',
    );
    expect(rows[1]?.warning).toBeNull();
    expect(weighing).toMatchObject({ smallestBatchGrams: '2', isSmallestInParts: false });
  });

  it('says that there is no scale, where none is left', async () => {
    await makeFirmBase(at.bench, at.shop, '800');
    for (const id of Object.values(at.shop.scales)) await failCheck(id);
    const { weighing } = await plan('100');
    expect(weighing.smallestBatchGrams).toBeNull();
    expect(weighing.leftOut).toHaveLength(3);
    expect(weighing.small.map(({ says }) => says.code)).toEqual(['way-no-scale', 'way-no-scale']);
  });
});
