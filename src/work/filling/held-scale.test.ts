import { describe, expect, it } from 'vitest';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openFillingBench } from '../../../test/workshop/filling-bench.ts';
import { checkScale, holdScale } from '../../../test/workshop/hold-scale.ts';

const at = openFillingBench();
const { makeBowl, start, startRun, fill } = at;
const small = () => at.shop.scales.small;

describe('tins on a scale that did not pass its check', () => {
  it('are not begun on it', async () => {
    const bowl = await makeBowl();
    await holdScale(at.bench, small());
    expect(codesOf(await start(bowl.id))).toEqual(['scale-must-pass']);
    expect(codesOf(await start(bowl.id, { scaleId: at.shop.scales.middle }))).toEqual([]);
    await checkScale(at.bench, small(), '100');
    expect(codesOf(await start(bowl.id))).toEqual([]);
  });

  it('are asked about each time, and the answer stands with the weight', async () => {
    const run = await startRun((await makeBowl()).id);
    await holdScale(at.bench, small());
    expect(codesOf(await fill(run.id, '46.45'))).toEqual(['scale-held']);
    expect(codesOf(await fill(run.id, '46.45', { sure: ['scale-held'] }))).toEqual([]);
    await checkScale(at.bench, small(), '100');
    expect(codesOf(await fill(run.id, '46.43'))).toEqual([]);
    const { weights } = await at.bench.get('getRun', { params: { id: run.id } });
    expect(weights.map(({ sure }) => sure)).toEqual([['scale-held'], []]);
  });

  it('weighed before it failed and told afterwards count as they are', async () => {
    const run = await startRun((await makeBowl()).id);
    const before = at.bench.stamp();
    at.bench.setClock('2026-11-26T09:00:00Z');
    await holdScale(at.bench, small());
    expect(codesOf(await fill(run.id, '46.45', { stamp: before }))).toEqual([]);
  });

  it('keep their run from its release, and closing asks before that cannot be mended', async () => {
    const run = await startRun((await makeBowl()).id);
    await holdScale(at.bench, small());
    expect(codesOf(await fill(run.id, '46.45', { sure: ['scale-held'] }))).toEqual([]);
    expect(codesOf(await at.close(run.id, { leftGrams: '140' }))).toEqual(['tins-on-held-scale']);
    await at.closeRun(run.id, { leftGrams: '140', sure: ['tins-on-held-scale'] });
    const { checks } = await at.bench.get('getRun', { params: { id: run.id } });
    expect(checks.find(({ check }) => check === 'weights')).toMatchObject({
      isPassed: false,
      detail: { code: 'check-weights-scale-held', parameters: { count: 1, which: '1' } },
    });
  });
});
