import type { steps } from '../contract/index.ts';
import { isUsualDensity } from '../core/making/index.ts';
import { exact } from '../core/quantity/index.ts';
import { listStepsWeighed, listWhipRounds, type Reader } from '../storage/index.ts';

export interface CupsOfBatch {
  readonly batchId: string;
  /** As it goes into its tins: after the last round of a load, or at a cup test. */
  readonly isFinal: boolean;
  readonly cups: readonly steps.FullCup[];
}

/** One that can only be a slip teaches nothing, also where somebody said that it is so. */
const isTeaching = ({ grossGrams, tareGrams, cupMl }: steps.FullCup): boolean =>
  exact(cupMl).gt(0) && isUsualDensity(exact(grossGrams).minus(tareGrams), cupMl);

/** Rounds first, then cup tests: the last of a batch is how it went into its tins. */
export async function listCups(db: Reader, batchIds: readonly string[]): Promise<CupsOfBatch[]> {
  const rounds = (await listWhipRounds(db, batchIds))
    .filter((row) => !row.is_struck)
    .map((row) => ({
      batchId: row.batch_id,
      isFinal: row.goes === 'stop',
      cups: JSON.parse(row.cups) as steps.FullCup[],
    }));
  const tests = (await listStepsWeighed(db, batchIds)).map((row) => {
    const weighed = JSON.parse(row.weighed) as steps.StepWeighed;
    const { cupMl } = weighed;
    const cups = cupMl === null ? [] : [{ ...weighed, cupMl, tinOf: '' }];
    return { batchId: row.batch_id, isFinal: true, cups };
  });
  return [...rounds, ...tests]
    .map((each) => ({ ...each, cups: each.cups.filter(isTeaching) }))
    .filter(({ cups }) => cups.length > 0);
}
