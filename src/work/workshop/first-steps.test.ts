import { afterEach, describe, expect, it } from 'vitest';
import { buildIngredient, buildLot, buildPackaging } from '../../../test/workshop/build-stock.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';

let bench: TestWorkshop;
afterEach(() => bench.close());

const stepsLeft = async (): Promise<string[]> =>
  (await bench.get('getFirstSteps')).filter(({ isDone }) => !isDone).map(({ step }) => step);

describe('the first steps of a workshop', () => {
  it('are all named from the first day, with what the first start has done already', async () => {
    bench = await openTestWorkshop();
    const steps = await bench.get('getFirstSteps');
    expect(steps.map(({ step }) => step)).toEqual([
      'people',
      'place',
      'scale',
      'address',
      'material',
      'count',
      'formula',
      'report',
      'product',
      'order',
    ]);
    expect(steps.filter(({ isDone }) => isDone).map(({ step }) => step)).toEqual(['people', 'place']);
  });

  it('are done one by one, in whatever order', async () => {
    bench = await openTestWorkshop();
    const material = await buildIngredient(bench);
    expect(await stepsLeft()).toContain('material');
    await buildPackaging(bench);
    expect(await stepsLeft()).toEqual(['scale', 'address', 'count', 'formula', 'report', 'product', 'order']);
    await buildLot(bench, material);
    expect(await stepsLeft()).not.toContain('count');
  });

  it('ask for an address until one responsible person has a name and an address', async () => {
    bench = await openTestWorkshop();
    const { details, version } = await bench.get('getWorkshop');
    if (!details) throw new Error('a begun workshop has details');
    const half = { ...details, responsibleGb: { name: 'Test Bench', address: '' } };
    await bench.get('changeWorkshop', { body: { version, details: half } });
    expect(await stepsLeft()).toContain('address');
    const whole = { ...details, responsibleEu: { name: 'Test Agents', address: '2 Quay, Testport' } };
    await bench.get('changeWorkshop', { body: { version: version + 1, details: whole } });
    expect(await stepsLeft()).not.toContain('address');
  });

  it('are all to be done before the first start', async () => {
    bench = await openTestWorkshop({ isEmpty: true });
    expect(await stepsLeft()).toHaveLength(10);
  });
});
