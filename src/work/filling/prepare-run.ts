import { problem } from '../../core/problem.ts';
import { giveUp, insertRunReady, listRunReady, type Writer } from '../../storage/index.ts';
import { record } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { openRun } from './open-run.ts';
import { viewRun } from './run-view.ts';

/**
 * Before the first tin: containers cleaned, area cleared of an earlier product, pieces counted out. Said again, the last
 * word counts; the earlier stay readable.
 * Source: ISO 22716:2007, clause 7 (packaging operations: line clearance, packaging materials), from memory.
 */
export const prepareRun: UseCase<'prepareRun'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const run = await openRun(tx, params.id ?? '', body.stamp);
      const { word, stamp } = body;
      if (word.kind === 'area' && !word.isClear && word.reason.trim() === '')
        giveUp(problem('area-reason-missing', 'word.reason'));
      await tell({
        kind: `run-ready-${word.kind}`,
        subjectKind: 'filling-run',
        subjectId: run.id,
        payload: word,
      });
      await insertRunReady(tx, {
        entry_id: stamp.id,
        filling_run_id: run.id,
        kind: word.kind,
        details: JSON.stringify(word),
      });
      return run.id;
    },
    (id) => viewRun(context, id),
  );

/** Tins for sale are not filled before somebody said that the bench is clear, or why they are filled all the same. */
export async function refuseUnclear(
  tx: Writer,
  run: { readonly id: string; readonly number: string; readonly purpose: string },
): Promise<void> {
  if (run.purpose !== 'sale') return;
  const words = await listRunReady(tx, [run.id]);
  if (!words.some(({ kind }) => kind === 'area'))
    giveUp(problem('area-not-cleared', `filling run ${run.number}`));
}
