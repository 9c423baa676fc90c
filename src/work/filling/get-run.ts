import { done } from '../../core/problem.ts';
import { listRunsAtHand } from '../../storage/index.ts';
import type { UseCase } from '../use-case.ts';
import { gatherRuns } from './run-records.ts';
import type { RunView } from './run-shapes.ts';
import { viewRecords, viewRun } from './run-view.ts';

export const getRun: UseCase<'getRun'> = (context, { params }) => viewRun(context, params.id ?? '');

/** So many runs are listed, and every older one that waits for its release (common practice, no source). */
const NEWEST = 50;

/** What a release would look at is worked out for one run at a time: a list shows none of it. */
export const listRuns: UseCase<'listRuns'> = async (context) => {
  const { db } = context.storage;
  const runs: RunView[] = [];
  for (const records of await gatherRuns(db, await listRunsAtHand(db, NEWEST)))
    runs.push(await viewRecords(context, records));
  return done(runs);
};
