import { describe, expect, it } from 'vitest';
import { openMakingBench } from '../../../test/workshop/making-bench.ts';

const at = openMakingBench();

async function scalesThisMorning(): Promise<string[]> {
  const { makeNext } = await at.bench.get('getMorning');
  return makeNext
    .filter(({ key }) => key.startsWith('scale '))
    .map(({ title, state }) => `${title}: ${state}`);
}
async function giveWeight(): Promise<void> {
  const { scales } = await at.bench.get('getWorkshop');
  const small = scales.find(({ id }) => id === at.shop.scales.small);
  if (!small) throw new Error('the bench lacks its small scale');
  const { name, capacityGrams, readabilityGrams, version, id } = small;
  await at.bench.get('saveScale', {
    body: {
      scale: {
        id,
        version,
        name,
        capacityGrams,
        readabilityGrams,
        repeatabilityGrams: null,
        accuracyClass: null,
        verificationIntervalGrams: null,
        checkWeightGrams: '100',
        checkToleranceGrams: null,
      },
    },
  });
}
const check = (readingGrams: string) =>
  at.bench.get('recordScaleCheck', {
    params: { id: at.shop.scales.small },
    body: { weightGrams: '100', toleranceGrams: '0', readingGrams },
  });

describe('scales in the morning', () => {
  it('are to be checked only where something is weighed, and until one was good today', async () => {
    await giveWeight();
    expect(await scalesThisMorning()).toEqual([]);
    await at.startBase();
    expect(await scalesThisMorning()).toEqual(['Small scale: watch']);
    await check('100.05');
    expect(await scalesThisMorning()).toEqual(['Small scale: stop']);
    await check('100.01');
    expect(await scalesThisMorning()).toEqual([]);
  });

  it('without a check weight are not asked for', async () => {
    await at.startBase();
    expect(await scalesThisMorning()).toEqual([]);
  });
});
