import { describe, expect, it } from 'vitest';
import { buildLot } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openMakingBench } from '../../../test/workshop/making-bench.ts';

const at = openMakingBench();
const { onHand, startBase, weigh } = at;

const ranOut = { what: 'The rest from another lot', why: 'The first lot ran out' };

async function viewOf(id: string) {
  const view = await at.bench.get('getBatch', { params: { id } });
  const [first] = view.screens;
  if (first?.kind !== 'addition') throw new Error('a base begins with an addition');
  return { view, first };
}

describe('weighing in parts', () => {
  it('takes the rest from another lot: each part from its own, and the sum is judged', async () => {
    const batch = await startBase();
    const other = await buildLot(at.bench, at.shop.materials.shea, { bestBefore: '2028-01-31' });
    expect((await weigh(batch, 0, '300', { isPart: true })).ok).toBe(true);
    const { first: open } = await viewOf(batch.id);
    expect(open).toMatchObject({ done: null, inGrams: '300', leftGrams: '220', targetGrams: '520' });
    expect(open.entries).toMatchObject([{ actualGrams: '300', isPart: true, verdict: 'inside' }]);

    const rest = await weigh(batch, 0, '221', { lotId: other, deviation: ranOut });
    expect(rest.ok && rest.value).toMatchObject({ actualGrams: '221', isPart: false, verdict: 'inside' });
    const { first, view } = await viewOf(batch.id);
    expect(first).toMatchObject({
      inGrams: '521',
      leftGrams: '0',
      done: { actualGrams: '521', lotId: other },
    });
    expect(first.entries.map((entry) => entry.actualGrams)).toEqual(['300', '221']);
    expect(view.screensDone).toBe(1);
    // One gram above the 220 g that were left to weigh.
    expect(view.deviations).toMatchObject([{ offGrams: '1' }]);
    expect(await onHand(at.shop.lots.shea)).toBe('1700');
    expect(await onHand(other)).toBe('779');
  });

  it('keeps which lot comes next where one ran out', async () => {
    const batch = await startBase();
    const other = await buildLot(at.bench, at.shop.materials.shea, { bestBefore: '2028-01-31' });
    await weigh(batch, 0, '300', { isPart: true, restLotId: other });
    const { first } = await viewOf(batch.id);
    const { lot } = await at.bench.get('getLot', { params: { id: other } });
    expect(first.entries[0]?.reading).toEqual({
      asked: null,
      vessel: null,
      restLot: { id: other, number: lot.number },
    });
  });

  it('takes no lot of something else for the rest', async () => {
    const batch = await startBase();
    const part = await weigh(batch, 0, '300', { isPart: true, restLotId: at.shop.lots.oil });
    expect(codesOf(part)).toEqual(['lot-of-another-item']);
  });

  it('judges the sum of the parts: 300 g and 209.5 g are too little of 520 g', async () => {
    const batch = await startBase();
    await weigh(batch, 0, '300', { isPart: true });
    const refused = await weigh(batch, 0, '209.5');
    expect(refused.ok || refused.problems[0]).toMatchObject({
      code: 'weight-outside-band',
      allowed: '220',
      parameters: { low: '209.6', high: '230.4' },
    });
    expect((await weigh(batch, 0, '209.6')).ok).toBe(true);
  });

  it('is open again where the part before the rest is struck: on the list, and for the finish too', async () => {
    const batch = await startBase();
    const part = await weigh(batch, 0, '300', { isPart: true });
    await weigh(batch, 0, '220');
    await weigh(batch, 1, '280');
    const entryId = part.ok ? part.value.entryId : '';
    const params = { id: batch.id };
    await at.bench.get('strikeAddition', { params, body: { entryId, reason: 'Another tub' } });
    const { first, view } = await viewOf(batch.id);
    expect(first).toMatchObject({ done: null, inGrams: '220', leftGrams: '300' });
    expect(view.screensDone).toBe(1);
    expect((await at.bench.get('listBatches'))[0]?.screensDone).toBe(1);
    const finish = () => at.bench.ask('finishBatch', { params, body: { yieldGrams: '490' } });
    expect(codesOf(await finish())).toEqual(['additions-missing']);
    expect((await weigh(batch, 0, '299', { deviation: ranOut })).ok).toBe(true);
    expect(codesOf(await finish())).toEqual([]);
  });

  it('is open, and the batch cannot be finished, while only a part is in', async () => {
    const batch = await startBase();
    await weigh(batch, 0, '300', { isPart: true });
    await weigh(batch, 1, '280');
    const finished = await at.bench.ask('finishBatch', {
      params: { id: batch.id },
      body: { yieldGrams: '570' },
    });
    expect(codesOf(finished)).toEqual(['additions-missing']);
    const [listed] = await at.bench.get('listBatches');
    expect(listed?.screensDone).toBe(1);
  });

  it('goes back by one part when that one is struck', async () => {
    const batch = await startBase();
    await weigh(batch, 0, '300', { isPart: true });
    const last = await weigh(batch, 0, '220');
    const entryId = last.ok ? last.value.entryId : '';
    await at.bench.get('strikeAddition', {
      params: { id: batch.id },
      body: { entryId, reason: 'Read wrong' },
    });
    const { first } = await viewOf(batch.id);
    expect(first).toMatchObject({ done: null, inGrams: '300', leftGrams: '220' });
    expect(await onHand(at.shop.lots.shea)).toBe('1700');
  });

  it('refuses to wait for more where enough is in', async () => {
    const batch = await startBase();
    expect(codesOf(await weigh(batch, 0, '509.6', { isPart: true }))).toEqual(['part-is-all']);
    expect((await weigh(batch, 0, '509.5', { isPart: true })).ok).toBe(true);
  });
});
