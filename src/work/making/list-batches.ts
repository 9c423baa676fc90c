import { done } from '../../core/problem.ts';
import {
  countScreens,
  listRunStates,
  type RunState,
  listBatches as readBatches,
  sumMadeOnHand,
} from '../../storage/index.ts';
import type { UseCase } from '../use-case.ts';
import { summarise } from './batch-view.ts';

/** All batches, the newest first, with the same few queries for two or two thousand. */
export const listBatches: UseCase<'listBatches'> = async ({ storage: { db } }) => {
  const screens = await countScreens(db);
  const onHand = await sumMadeOnHand(db);
  const runs = new Map<string, RunState[]>();
  for (const run of await listRunStates(db)) runs.set(run.batch_id, [...(runs.get(run.batch_id) ?? []), run]);
  return done(
    (await readBatches(db)).map((head) =>
      summarise(head, {
        ...(screens.get(head.id) ?? { total: 0, done: 0 }),
        onHandUg: head.lot_id === null ? null : (onHand.get(head.lot_id) ?? 0),
        runs: runs.get(head.id) ?? [],
      }),
    ),
  );
};
