import { describe, expect, it } from 'vitest';
import { inGrams, makeAll, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openMakingBench, type Started } from '../../../test/workshop/making-bench.ts';
import { say, sayProblem } from '../../words/index.ts';

const at = openMakingBench();
const { weigh, additionAt } = at;

/** A batch of 100 g, 1 % of it lavender oil, of which the report allows 1.5 %. */
async function startMixture(purpose: 'sale' | 'trial' = 'sale'): Promise<Started> {
  await makeFirmBase(at.bench, at.shop, '800');
  return at.bench.get('startBatch', {
    body: { wish: inGrams(at.shop.mixtureRevision, '100', { purpose }) },
  });
}
const SCENT = 1;
const deviation = { what: 'Too much oil', why: 'The bottle slipped' };
const viewOf = (id: string) => at.bench.get('getBatch', { params: { id } });

describe('too much weighed in, as against limits and report', () => {
  it('is told before it counts, however well it is explained', async () => {
    const batch = await startMixture();
    expect(additionAt(batch, SCENT).targetGrams).toBe('1');
    const refused = await weigh(batch, SCENT, '7', { deviation });
    expect(codesOf(refused)).toEqual(['weighed-over-limits']);
    const [first] = refused.ok ? [] : refused.problems;
    expect(first && sayProblem(first).says).toContain('Lavender oil');
    expect((await viewOf(batch.id)).screens.every((screen) => screen.done === null)).toBe(true);
  });

  it('counts once the person was told and says why, and the batch shows it until it is resolved', async () => {
    const batch = await startMixture();
    expect(batch.asWeighed).toBeNull();
    const weighed = await weigh(batch, SCENT, '7', { deviation, isOverKnown: true });
    expect(codesOf(weighed)).toEqual([]);
    const { asWeighed } = await viewOf(batch.id);
    expect(asWeighed && say(asWeighed)).toBe(
      'Weighed in was more than the limits or the report allow: Lavender oil.',
    );
    const entryId = weighed.ok ? weighed.value.entryId : '';
    const body = { entryId, reason: 'Poured away, begun again' };
    await at.bench.get('strikeAddition', { params: { id: batch.id }, body });
    expect((await viewOf(batch.id)).asWeighed).toBeNull();
  });

  it('stays on the record of the made batch', async () => {
    const batch = await startMixture();
    await weigh(batch, SCENT, '7', { deviation, isOverKnown: true });
    await makeAll(at.bench, batch.id);
    const made = await at.bench.get('finishBatch', { params: { id: batch.id }, body: { yieldGrams: '100' } });
    expect(made.asWeighed?.code).toBe('check-weighed-over');
  });

  it('wants what and why besides the knowing', async () => {
    const batch = await startMixture();
    expect(codesOf(await weigh(batch, SCENT, '7', { isOverKnown: true }))).toEqual(['weight-outside-band']);
  });

  it('begins just above what the report allows, what is not weighed in yet counted as planned', async () => {
    const batch = await startMixture();
    // x / (99 + x) = 1.5 % at x = 1.507614 g.
    expect(codesOf(await weigh(batch, SCENT, '1.507615', { deviation }))).toEqual(['weighed-over-limits']);
    expect(codesOf(await weigh(batch, SCENT, '1.507614', { deviation }))).toEqual([]);
  });

  it('is not asked about in a trial, which is never sold, and is shown all the same', async () => {
    const batch = await startMixture('trial');
    expect(codesOf(await weigh(batch, SCENT, '7', { deviation }))).toEqual([]);
    expect((await viewOf(batch.id)).asWeighed?.code).toBe('check-weighed-over');
  });
});
