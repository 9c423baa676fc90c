import {
  listAdditions,
  listBatchLines,
  listBatchSteps,
  listStepRecords,
  type Reader,
} from '../../storage/index.ts';
import { buildScreens } from './batch-screens.ts';

/**
 * What was done already after the place of this addition: a later step, or something weighed in at a later stage. What
 * is weighed in then goes into something else than the method says. Nothing: undefined.
 */
export async function findLaterDone(
  db: Reader,
  batchId: string,
  position: number,
): Promise<string | undefined> {
  const screens = buildScreens({
    lines: await listBatchLines(db, batchId),
    steps: await listBatchSteps(db, batchId),
    additions: await listAdditions(db, batchId),
    stepRecords: await listStepRecords(db, batchId),
  });
  const place = screens.findIndex((each) => each.kind === 'addition' && each.position === position);
  const stage = screens[place]?.stage;
  const later = screens
    .slice(place + 1)
    .find((each) => each.done !== null && (each.kind === 'step' || each.stage !== stage));
  return later && (later.kind === 'step' ? later.what : later.itemName);
}
