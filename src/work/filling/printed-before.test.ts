import { describe, expect, it } from 'vitest';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { FIVE, openFillingBench } from '../../../test/workshop/filling-bench.ts';
import { say } from '../../words/index.ts';

const at = openFillingBench();

async function closedRun(): Promise<string> {
  const run = await at.startRun((await at.makeBowl()).id);
  await at.fillAll(run.id, ...FIVE);
  await at.closeRun(run.id);
  return run.id;
}
const print = (id: string, more: object = {}) =>
  at.bench.get('printRunLabels', { params: { id }, body: { market: 'GB', copies: 5, ...more } });
const failing = async (id: string) =>
  (await at.bench.get('getRun', { params: { id } })).checks
    .filter(({ isPassed }) => !isPassed)
    .map(({ check, detail }) => `${check}: ${say(detail)}`);
async function moveHouse(address: string): Promise<void> {
  const { version, details } = await at.bench.get('getWorkshop');
  if (!details) throw new Error('the workshop has begun');
  const responsibleGb = { ...details.responsibleGb, address };
  await at.bench.get('changeWorkshop', { body: { version, details: { ...details, responsibleGb } } });
}
const NEW_ADDRESS = '9 New Lane, Testham TT1 1TT, United Kingdom';

describe('labels that were printed before something changed', () => {
  it('keep the tins from being released until the label of today is printed', async () => {
    const id = await closedRun();
    await print(id);
    expect(await failing(id)).toEqual([]);
    await moveHouse(NEW_ADDRESS);
    expect(await failing(id)).toEqual([
      'label-GB: The labels printed for Great Britain say something else than they would now (Back): print them again, and put the new ones on.',
    ]);
    expect(codesOf(await at.release(id))).toEqual(['release-check-failed']);
    await print(id, { pieces: ['back'] });
    expect(await failing(id)).toEqual([]);
    expect(codesOf(await at.release(id))).toEqual([]);
  });

  it('do while only their look changed, and where none was printed for the market', async () => {
    const id = await closedRun();
    await print(id);
    const { details } = await at.bench.get('getLabelDesign', { params: { id: at.shop.product } });
    const [front, back] = details.pieces;
    if (!front || !back) throw new Error('front and back');
    const larger = { ...front, surface: { shape: 'round' as const, diameterMm: 66 } };
    await at.bench.get('saveLabelDesign', {
      params: { id: at.shop.product },
      body: { version: null, details: { ...details, pieces: [larger, back] } },
    });
    expect(await failing(id)).toEqual([]);
  });

  it('are not known to say the same once they are designed anew in other pieces', async () => {
    const id = await closedRun();
    await print(id);
    const whole = { id: 'all', role: 'whole' as const, surface: { shape: 'round' as const, diameterMm: 80 } };
    await at.bench.get('saveLabelDesign', {
      params: { id: at.shop.product },
      body: { version: null, details: { pieces: [whole] } },
    });
    expect((await failing(id)).map((each) => each.slice(0, 8))).toEqual(['label-GB']);
    await print(id);
    expect(await failing(id)).toEqual([]);
  });
});
