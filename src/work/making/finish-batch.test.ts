import { describe, expect, it } from 'vitest';
import { inGrams, makeAll, makeBatch, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openMakingBench } from '../../../test/workshop/making-bench.ts';

const at = openMakingBench();
const { onHand, startBase, weigh } = at;

describe('the end of a batch', () => {
  it('makes a base a lot in quarantine with its setting time, looked at again no later than its lots end', async () => {
    const made = await makeBatch(at.bench, inGrams(at.shop.baseRevision, '800'), 9.5);
    expect(made).toMatchObject({
      state: 'made',
      lotOnHand: '790.5',
      outcome: { inputGrams: '800', yieldGrams: '790.5', lossGrams: '9.5', by: 'Ada Quill' },
    });
    const { lot } = await at.bench.get('getLot', { params: { id: made.lotId ?? '' } });
    expect(lot).toMatchObject({
      number: 'QB-0001',
      status: 'quarantine',
      since: '2026-11-26',
      bestBefore: '2027-08-31',
      keepUntil: '2027-05-26',
      firmFrom: '2026-11-26T20:05:00Z',
      firmTo: '2026-11-27T08:05:00Z',
    });
  });

  it('releases a mixture for filling, under another number than its tins will carry', async () => {
    await makeFirmBase(at.bench, at.shop, '800');
    const made = await makeBatch(at.bench, inGrams(at.shop.mixtureRevision, '190.8'));
    const { lot } = await at.bench.get('getLot', { params: { id: made.lotId ?? '' } });
    expect(lot).toMatchObject({
      number: 'LB-0001 in the bowl',
      status: 'released',
      bestBefore: '2027-06-30',
    });
  });

  it('waits until everything is weighed in', async () => {
    const batch = await startBase();
    await weigh(batch, 0, '520');
    const body = { yieldGrams: '500' };
    const refusal = await at.bench.ask('finishBatch', { params: { id: batch.id }, body });
    expect(codesOf(refusal)).toEqual(['additions-missing']);
  });

  it('does not believe more out than in, beyond the errors of the weighings', async () => {
    const batch = await startBase();
    await makeAll(at.bench, batch.id);
    const finish = (yieldGrams: string) =>
      at.bench.ask('finishBatch', { params: { id: batch.id }, body: { yieldGrams } });
    // Two weighings on a scale of 0.1 g: 0.1 g of error each, and as much again for the yield.
    expect(codesOf(await finish('800.5'))).toEqual(['yield-above-input']);
    const made = await finish('800.4');
    expect(made.ok && made.value.outcome).toMatchObject({ lossGrams: '-0.4' });
  });

  it('asks where less than half of what went in came out: the rest would be lost for good', async () => {
    const batch = await startBase();
    await makeAll(at.bench, batch.id);
    const finish = (yieldGrams: string, more: object = {}) =>
      at.bench.ask('finishBatch', { params: { id: batch.id }, body: { yieldGrams, ...more } });
    expect(codesOf(await finish('79.9'))).toEqual(['yield-half-gone']);
    expect(codesOf(await finish('399.9'))).toEqual(['yield-half-gone']);
    expect(codesOf(await finish('399.9', { isYieldSure: true }))).toEqual([]);
  });

  it('takes half of what went in without a question', async () => {
    const batch = await startBase();
    await makeAll(at.bench, batch.id);
    const body = { yieldGrams: '400' };
    expect(codesOf(await at.bench.ask('finishBatch', { params: { id: batch.id }, body }))).toEqual([]);
  });

  it('takes no more entries when it is made or given up', async () => {
    const batch = await startBase();
    await weigh(batch, 0, '520');
    const params = { id: batch.id };
    const given = await at.bench.get('abandonBatch', { params, body: { reason: 'Burnt' } });
    expect(given).toMatchObject({ state: 'abandoned', outcome: { inputGrams: '520', lossGrams: '520' } });
    expect(await onHand(at.shop.lots.shea)).toBe('1480');
    expect(codesOf(await weigh(batch, 1, '280'))).toEqual(['batch-not-making']);
    expect(codesOf(await at.bench.ask('finishBatch', { params, body: { yieldGrams: '1' } }))).toEqual([
      'batch-not-making',
    ]);
    expect(await at.bench.get('listBatches')).toMatchObject([
      { state: 'abandoned', screensDone: 1, screensTotal: 4 },
    ]);
  });

  it('is signed by somebody who works here', async () => {
    const wish = inGrams(at.shop.baseRevision, '800');
    const body = { stamp: at.bench.stamp({ by: 'nobody' }), wish };
    expect(codesOf(await at.bench.ask('startBatch', { body }))).toEqual(['person-unknown']);
  });
});
