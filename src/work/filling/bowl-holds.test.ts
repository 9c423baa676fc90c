import { describe, expect, it } from 'vitest';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openFillingBench } from '../../../test/workshop/filling-bench.ts';
import { sayProblem } from '../../words/index.ts';

const at = openFillingBench();
const { makeBowl, startRun, fill, fillAll, closeRun } = at;

describe('a bowl that is filled into tins', () => {
  it('gives no more than it holds, and the refusal says how much is left', async () => {
    const batch = await makeBowl();
    const run = await startRun(batch.id, { wanted: 9 });
    // 189.8 g in the bowl; five tins of 36 g take 180 of them.
    await fillAll(run.id, '47.4', '47.4', '47.4', '47.4', '47.4');
    const refused = await fill(run.id, '47.4');
    expect(refused).toMatchObject({
      ok: false,
      problems: [
        {
          code: 'bowl-holds-less',
          found: '36',
          allowed: '9.8',
          parameters: { held: '189.8', filled: '180' },
        },
      ],
    });
    const [first] = refused.ok ? [] : refused.problems;
    expect(first && sayProblem(first).says).toBe(
      'This tin would hold 36 g, and 9.8 g are left: the bowl held 189.8 g, and 180 g are in tins.',
    );
  });

  it('gives what the scales may be off on top, and not a microgram more', async () => {
    const batch = await makeBowl();
    const run = await startRun(batch.id, { wanted: 9 });
    await fillAll(run.id, '47.4', '47.4', '47.4', '47.4');
    // 45.8 g are left; five weighings of 0.01 g on the small scale, and the yield may be off by 1 g on the bench scale.
    expect(codesOf(await fill(run.id, '58.250001', { sure: ['reading-not-a-step'] }))).toEqual([
      'bowl-holds-less',
    ]);
    expect(codesOf(await fill(run.id, '58.25'))).toEqual([]);
  });

  it('counts what other open runs took out of it, and struck tins not', async () => {
    const batch = await makeBowl();
    const one = await startRun(batch.id, { wanted: 5 });
    const other = await startRun(batch.id, { wanted: 5 });
    await fillAll(one.id, '47.4', '47.4', '47.4');
    await fillAll(other.id, '47.4', '47.4');
    expect(codesOf(await fill(other.id, '47.4'))).toEqual(['bowl-holds-less']);
    const { weights } = await at.bench.get('getRun', { params: { id: one.id } });
    const body = { entryId: weights[0]?.entryId ?? '', reason: 'Back into the bowl' };
    await at.bench.get('strikeFill', { params: { id: one.id }, body });
    expect(codesOf(await fill(other.id, '47.4'))).toEqual([]);
  });

  it('holds after a closed run what that left', async () => {
    const batch = await makeBowl();
    const one = await startRun(batch.id, { wanted: 2 });
    await fillAll(one.id, '47.4', '47.4');
    await closeRun(one.id, { leftGrams: '40' });
    const other = await startRun(batch.id, { wanted: 5 });
    await fillAll(other.id, '47.4');
    expect(codesOf(await fill(other.id, '47.4'))).toEqual(['bowl-holds-less']);
  });
});
