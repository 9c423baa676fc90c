import { describe, expect, it } from 'vitest';
import { inGrams, makeBatch } from '../../../test/workshop/build-making.ts';
import { countQueries } from '../../../test/workshop/count-queries.ts';
import { openMakingBench } from '../../../test/workshop/making-bench.ts';

const at = openMakingBench();
const { startBase, weigh } = at;

describe('how often the file is asked', () => {
  const list = () => countQueries(at.bench, () => at.bench.get('listBatches'));

  it('is the same for a list of one batch and of twenty', async () => {
    await makeBatch(at.bench, inGrams(at.shop.baseRevision, '20'));
    const few = await list();
    for (let nth = 0; nth < 19; nth += 1) await startBase('20');
    expect(await at.bench.get('listBatches')).toHaveLength(20);
    expect(await list()).toBe(few);
  });

  it('is the same for the first weighing of a batch and the last', async () => {
    const batch = await startBase();
    const first = await countQueries(at.bench, () => weigh(batch, 0, '520'));
    const last = await countQueries(at.bench, () => weigh(batch, 1, '280'));
    expect(last).toBe(first);
    // What the batch is as weighed is checked each time, bands or not; and whether the entry stands as a question already.
    expect(first).toBeLessThan(66);
  });
});
