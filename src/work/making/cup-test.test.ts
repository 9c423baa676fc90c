import { describe, expect, it } from 'vitest';
import { buildMixture, line, step } from '../../../test/workshop/build-formula.ts';
import { inGrams } from '../../../test/workshop/build-making.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openMakingBench } from '../../../test/workshop/making-bench.ts';
import { textOfPdf } from '../../../test/workshop/render-pdf.ts';
import type { steps } from '../../contract/index.ts';
import type { Paper } from '../use-case.ts';

const at = openMakingBench();

describe('a step that weighs a cup', () => {
  async function startTrial() {
    const method = [step('cup', 'Cup test: weigh a full cup', { stage: 'Whip' })];
    const lines = [line(at.shop.materials.shea, '100', { stage: 'Whip' })];
    const { revisionId } = await buildMixture(at.bench, lines, {
      name: 'Cup butter',
      code: 'CB',
      details: { steps: method },
    });
    return at.bench.get('startBatch', { body: { wish: inGrams(revisionId, '100', { purpose: 'trial' }) } });
  }
  const record = (id: string, weighed: steps.StepWeighed | null) =>
    at.bench.ask('recordStep', {
      params: { id },
      body: { position: 0, celsius: null, minutes: null, remark: '', weighed },
    });
  const cup = { grossGrams: '155', tareGrams: '45', cupMl: '200', unwhippedGrams: '220' };
  const doneOf = (batch: Awaited<ReturnType<typeof startTrial>>) =>
    batch.screens.find((screen) => screen.kind === 'step')?.done;
  async function finish(id: string): Promise<string> {
    const batch = await at.bench.get('getBatch', { params: { id } });
    const deviation = { what: 'The cup came first', why: 'To test the cup' };
    await at.weigh(batch, 0, '100', { deviation });
    await at.bench.get('finishBatch', { params: { id }, body: { yieldGrams: '100' } });
    const { bytes } = (await at.bench.get('getBatchSheet', { params: { id } })) as Paper;
    return textOfPdf(bytes).replace(/\s+/g, ' ');
  }

  it('keeps what was weighed, and its record says what it tells', async () => {
    const batch = await startTrial();
    const kept = await record(batch.id, cup);
    expect(kept.ok && doneOf(kept.value)).toMatchObject({ weighed: cup });
    expect(await finish(batch.id)).toContain('110 g, 0.55 g/ml, overrun 100 %');
  });

  it('may be passed with nothing entered, and the record says so', async () => {
    const batch = await startTrial();
    const kept = await record(batch.id, null);
    expect(kept.ok && doneOf(kept.value)).toMatchObject({ weighed: null });
    expect(await finish(batch.id)).toContain('nothing entered');
  });

  it('is refused without its volume, empty, and where whipping would have made it heavier', async () => {
    const { id } = await startTrial();
    expect(codesOf(await record(id, { ...cup, cupMl: null }))).toEqual(['number-missing']);
    expect(codesOf(await record(id, { ...cup, tareGrams: '155' }))).toEqual(['weighed-nothing']);
    expect(codesOf(await record(id, { ...cup, unwhippedGrams: '109.9' }))).toEqual(['cup-lighter-before']);
  });
});
