import { describe, expect, it } from 'vitest';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { countQueries } from '../../../test/workshop/count-queries.ts';
import { openFillingBench } from '../../../test/workshop/filling-bench.ts';
import { listRunsAtHand } from '../../storage/index.ts';

const at = openFillingBench();
const { makeBowl, startRun, fillAll, closeRun, release } = at;

describe('the list of runs', () => {
  it('lists the runs with the same answers as one by one', async () => {
    const batch = await makeBowl();
    const one = await startRun(batch.id, { wanted: 2 });
    await fillAll(one.id, '46.45', '46.45');
    await closeRun(one.id, { leftGrams: '100' });
    const other = await startRun(batch.id, { wanted: 2 });
    await fillAll(other.id, '46.45');
    const listed = await at.bench.get('listRuns');
    expect(listed.map((run) => run.number)).toEqual(['LB-0001B', 'LB-0001']);
    // What a release would look at is told of one run at a time.
    for (const run of listed) {
      const { checks, ...one } = await at.bench.get('getRun', { params: { id: run.id } });
      expect(run).toEqual({ ...one, checks: [] });
      expect(checks.length > 0).toBe(run.state === 'closed');
    }
  });

  it('asks the file as often for a list of four released runs as for one', async () => {
    const released = async () => {
      const run = await startRun((await makeBowl(1)).id, { wanted: 1 });
      await fillAll(run.id, '46.45');
      await closeRun(run.id);
      expect(codesOf(await release(run.id))).toEqual([]);
    };
    const countReads = () => countQueries(at.bench, () => at.bench.get('listRuns'));
    await released();
    const one = await countReads();
    expect(one).toBeGreaterThan(5);
    for (let nth = 0; nth < 3; nth += 1) await released();
    expect(await at.bench.get('listRuns')).toHaveLength(4);
    expect(await countReads()).toBe(one);
  });

  it('asks the file as often for three runs that wait for their release as for one', async () => {
    const waiting = async () => {
      const run = await startRun((await makeBowl(1)).id, { wanted: 1 });
      await fillAll(run.id, '46.45');
      await closeRun(run.id);
    };
    const countReads = () => countQueries(at.bench, () => at.bench.get('listRuns'));
    await waiting();
    const one = await countReads();
    for (let nth = 0; nth < 2; nth += 1) await waiting();
    expect(await at.bench.get('listRuns')).toHaveLength(3);
    expect(await countReads()).toBe(one);
  });

  it('lists the newest runs, and every older one that waits for its release', async () => {
    const closedOf = async () => {
      const run = await startRun((await makeBowl(1)).id, { wanted: 1 });
      await fillAll(run.id, '46.45');
      return closeRun(run.id);
    };
    const [waits, decided, newest] = [await closedOf(), await closedOf(), await closedOf()];
    expect(codesOf(await release(decided.id))).toEqual([]);
    const listed = await listRunsAtHand(at.bench.context.storage.db, 1);
    expect(listed.map((run) => run.id)).toEqual([newest.id, waits.id]);
  });
});
