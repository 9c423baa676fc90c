import { describe, expect, it } from 'vitest';
import { makeAll } from '../../../test/workshop/build-making.ts';
import { openMakingBench } from '../../../test/workshop/making-bench.ts';

const at = openMakingBench();

async function make(grams: string, deviation?: object): Promise<void> {
  const batch = await at.startBase('100');
  await at.weigh(batch, 0, grams, deviation ? { deviation } : {});
  await makeAll(at.bench, batch.id);
  await at.bench.get('finishBatch', { params: { id: batch.id }, body: { yieldGrams: '98' } });
}
const wandering = () => at.bench.get('getWandering', { params: { id: at.shop.base } });

describe('which line of a formula wanders', () => {
  it('is told from the third making on, with the share of each', async () => {
    await make('65');
    await make('66');
    expect(await wandering()).toEqual({ made: 2, lines: [] });
    await make('64');
    const { made, lines } = await wandering();
    expect(made).toBe(3);
    expect(lines.map(({ itemName }) => itemName).sort()).toEqual(['Shea butter', 'Sunflower oil']);
    const shea = lines.find(({ itemName }) => itemName === 'Shea butter');
    // 65 of 100, 66 of 101, 64 of 99 g.
    expect(shea?.shares).toEqual(['65', '65.347', '64.646']);
    expect(shea).toMatchObject({
      askedPercent: '65',
      roomLowPercent: '63.7',
      roomHighPercent: '66.3',
      bound: 'band',
    });
    // The oil is the smaller: the same grams are more of its room.
    expect(lines[0]?.itemName).toBe('Sunflower oil');
  });

  it('is nothing of a formula that was never made', async () => {
    expect(await wandering()).toEqual({ made: 0, lines: [] });
  });
});
