import { problem } from '../../core/problem.ts';
import { giveUp, listBatchSteps, listStepRecords, type Writer } from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';

export type MethodStep = Awaited<ReturnType<typeof listBatchSteps>>[number];

export async function stepAt(tx: Writer, batchId: string, position: number): Promise<MethodStep> {
  const step = (await listBatchSteps(tx, batchId)).find((row) => row.position === position);
  if (!step) giveUp(thingNotFound('position', String(position)));
  return step;
}

/** What is done takes no more entries until its record is struck. */
export async function refuseDone(tx: Writer, batchId: string, step: MethodStep): Promise<void> {
  const standing = (await listStepRecords(tx, batchId)).find(
    (row) => row.position === step.position && !row.is_struck,
  );
  if (!standing) return;
  giveUp(
    problem('step-done-already', step.what, {
      found: standing.happened_at,
      parameters: { by: standing.person_name },
    }),
  );
}
