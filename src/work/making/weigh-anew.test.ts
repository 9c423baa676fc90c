import { describe, expect, it } from 'vitest';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openMakingBench, type Started } from '../../../test/workshop/making-bench.ts';
import { sayProblem } from '../../words/index.ts';

const at = openMakingBench();
const { weigh, startBase, additionAt } = at;
const [SHEA, OIL] = [0, 1];
const why = { what: 'Weighed anew', why: 'The tub was read wrong' };

async function strike(batch: Started, entryId: string, reason = 'Tub not tared'): Promise<void> {
  await at.bench.get('strikeAddition', { params: { id: batch.id }, body: { entryId, reason } });
}
async function weighIn(batch: Started, position: number): Promise<string> {
  const weighed = await weigh(batch, position, additionAt(batch, position).targetGrams);
  if (!weighed.ok) throw new Error(codesOf(weighed).join(', '));
  return weighed.value.entryId;
}
const step = (batch: Started, position: number) =>
  at.bench.get('recordStep', {
    params: { id: batch.id },
    body: { position, celsius: null, minutes: null, remark: '' },
  });

describe('weighing anew what was struck', () => {
  it('is not questioned while nothing later is done', async () => {
    const batch = await startBase();
    await strike(batch, await weighIn(batch, SHEA));
    expect(codesOf(await weigh(batch, SHEA, additionAt(batch, SHEA).targetGrams))).toEqual([]);
  });

  it('asks what was done differently, once a later step is done', async () => {
    const batch = await startBase();
    const entry = await weighIn(batch, SHEA);
    await step(batch, 0);
    await strike(batch, entry);
    const target = additionAt(batch, SHEA).targetGrams;
    const asked = await weigh(batch, SHEA, target);
    expect(codesOf(asked)).toEqual(['weighed-late']);
    const [first] = asked.ok ? [] : asked.problems;
    expect(first && sayProblem(first).says).toBe(
      'Shea butter is weighed in late: “Melt in a water bath” is done already.',
    );
    expect(codesOf(await weigh(batch, SHEA, target, { deviation: why }))).toEqual([]);
  });

  it('asks it once something of a later stage is weighed in', async () => {
    const batch = await startBase();
    const entry = await weighIn(batch, SHEA);
    await weighIn(batch, OIL);
    await strike(batch, entry);
    expect(codesOf(await weigh(batch, SHEA, additionAt(batch, SHEA).targetGrams))).toEqual(['weighed-late']);
  });
});

describe('weighing for the first time', () => {
  it('asks what was done differently, once a later step is done', async () => {
    const batch = await startBase();
    await step(batch, 0);
    const target = additionAt(batch, SHEA).targetGrams;
    expect(codesOf(await weigh(batch, SHEA, target))).toEqual(['weighed-late']);
    expect(codesOf(await weigh(batch, SHEA, target, { deviation: why }))).toEqual([]);
  });

  it('asks it once something of a later stage is weighed in', async () => {
    const batch = await startBase();
    await weighIn(batch, OIL);
    expect(codesOf(await weigh(batch, SHEA, additionAt(batch, SHEA).targetGrams))).toEqual(['weighed-late']);
  });
});

describe('a struck entry', () => {
  it('stands on the batch with who struck it, when and why', async () => {
    const batch = await startBase();
    expect(batch.struck).toEqual([]);
    const entryId = await weighIn(batch, SHEA);
    at.bench.setClock('2026-11-26T09:10:00Z');
    const params = { id: batch.id };
    await at.bench.get('strikeAddition', {
      params,
      body: { stamp: at.bench.stamp({ by: at.bench.people.second }), entryId, reason: 'Tub not tared' },
    });
    const { struck } = await at.bench.get('getBatch', { params });
    expect(struck).toMatchObject([
      {
        entryId,
        screen: 0,
        what: 'Shea butter',
        lotNumber: 'L-0001',
        actualGrams: '520',
        at: '2026-11-26T08:05:00Z',
        why: 'Tub not tared',
        struckAt: '2026-11-26T09:10:00Z',
      },
    ]);
    expect(struck[0]?.by).not.toBe(struck[0]?.struckBy);
  });

  it('of a step is shown as well', async () => {
    const batch = await startBase();
    const done = await step(batch, 0);
    const screen = done.screens.find((one) => one.kind === 'step');
    await strike(batch, screen?.done?.entryId ?? '', 'Not melted yet');
    const { struck } = await at.bench.get('getBatch', { params: { id: batch.id } });
    expect(struck).toMatchObject([
      { what: 'Melt in a water bath', actualGrams: null, lotNumber: null, why: 'Not melted yet' },
    ]);
  });
});
