import { problem } from '../../core/problem.ts';
import { findBatch, giveUp, insertDecision } from '../../storage/index.ts';
import { inside } from '../inside.ts';
import { record, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';
import { judgeWorstCase, worstCaseKey } from './judge-worst-case.ts';

/**
 * A batch that the scales' errors alone may bring over a limit is held until a named person decides, with a reason. What
 * is over as it was weighed is no question, and no decision lets it go.
 */
export const decideWorstCase: UseCase<'decideWorstCase'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await findBatch(tx, params.id ?? '');
      if (!batch) giveUp(thingNotFound('id', params.id ?? ''));
      const worst = await judgeWorstCase(inside(context, tx), batch);
      if (!worst?.isHeld) giveUp(problem('batch-not-held', `batch ${batch.number}`));
      if (worst.upon !== body.upon) giveUp(problem('worst-case-changed', `batch ${batch.number}`));
      const { verdict, reason } = body;
      await tell({
        kind: `worst-case-${verdict}`,
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: { number: batch.number, verdict, reason, upon: worst.upon, over: worst.over },
      });
      const key = worstCaseKey(batch.id);
      await insertDecision(tx, {
        entry_id: body.stamp.id,
        revision_id: batch.revision_id,
        unknown_key: key,
        verdict,
        reason,
        upon: JSON.stringify({ [key]: worst.upon }),
      });
      return batch.id;
    },
    (id) => viewBatch(context, id),
  );
