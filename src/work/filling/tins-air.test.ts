import { describe, expect, it } from 'vitest';
import { openFillingBench } from '../../../test/workshop/filling-bench.ts';

const at = openFillingBench();
const { makeBowl, startRun, fillAll, closeRun } = at;

/** The tins of the bench get a brim volume: nobody knows without it whether one is full. */
async function measureTin(brimMl: string): Promise<void> {
  const { details, version } = await at.bench.get('getMaterial', { params: { id: at.shop.materials.tin } });
  const body = { id: at.shop.materials.tin, version, details: { ...details, brimMl } };
  await at.bench.get('saveMaterial', { body });
}
const read = (id: string) => at.bench.get('getRun', { params: { id } });

describe('a run of what was whipped', () => {
  it('is told with its tin, and with how far tins of earlier runs lay from each other: not its own', async () => {
    await measureTin('66');
    const first = await startRun((await makeBowl()).id);
    await fillAll(first.id, '46.41', '46.51', '46.61');
    expect((await read(first.id)).air).toMatchObject({ brimMl: '66', spread: null, cups: [] });
    await closeRun(first.id);
    const second = await startRun((await makeBowl()).id);
    await fillAll(second.id, '46.45', '48.45');
    // 35.01, 35.11, 35.21: a tenth of a gram with two degrees of freedom.
    const { air } = await read(second.id);
    expect(air?.spread).toMatchObject({ runs: 1, tins: 3, degreesOfFreedom: 2 });
    expect(air?.spread?.standardDeviationGrams).toBeCloseTo(0.1, 10);
  });

  it('is told nothing of air once it is closed, nor where nobody measured what its tin holds', async () => {
    const run = await startRun((await makeBowl()).id);
    expect((await read(run.id)).air).toBeNull();
    await measureTin('66');
    expect((await read(run.id)).air).not.toBeNull();
    await fillAll(run.id, '46.41');
    await closeRun(run.id);
    expect((await read(run.id)).air).toBeNull();
  });

  it('is told the spread that its aim is learnt from: as tins were filled first, before three were filled up', async () => {
    await measureTin('66');
    const run = await startRun((await makeBowl(8)).id, { wanted: 6 });
    for (const gross of ['46.10', '46.20', '46.30']) {
      await fillAll(run.id, gross);
      const { weights } = await read(run.id);
      await at.fill(run.id, '46.45', { refillOf: weights.at(-1)?.entryId ?? null });
    }
    await fillAll(run.id, '46.45', '46.60', '46.75');
    await closeRun(run.id);
    const next = await startRun((await makeBowl()).id);
    const { air } = await read(next.id);
    // 34.7, 34.8, 34.9, 35.05, 35.2, 35.35: s = 0.24698 g; as they stand s would be 0.1255 g.
    expect(air?.spread?.standardDeviationGrams).toBeCloseTo(0.24698, 4);
  });
});
