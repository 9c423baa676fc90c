import type { complaints } from '../../contract/index.ts';
import { type Problem, problem } from '../../core/problem.ts';
import { judgeEffect } from '../../core/product-file/index.ts';
import { findComplaint, giveUp, insertComplaintWord, type Writer } from '../../storage/index.ts';
import { inside } from '../inside.ts';
import { record, refuseBefore, thingNotFound } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { findCustomerNamed } from './refuse-names.ts';
import { type ComplaintView, viewComplaint } from './view-complaint.ts';

type Body = RequestOf<'followComplaint'>['body'];

export const followComplaint: UseCase<'followComplaint'> = (context, { params: { id = '' }, body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const row = await findComplaint(tx, id);
      if (!row) giveUp(thingNotFound('id', id));
      refuseBefore(body.stamp, row.happened_at, row.product_name);
      const now = await viewComplaint(inside(context, tx), id);
      const problems = now.ok ? await judgeWord(tx, now.value, body) : now.problems;
      if (problems.length > 0) giveUp(...problems);
      const { stamp, ...rest } = body;
      await tell({ kind: 'complaint-followed', subjectKind: 'complaint', subjectId: id, payload: rest });
      await insertComplaintWord(tx, {
        entry_id: stamp.id,
        complaint_id: id,
        state: rest.state,
        said: rest.said,
        judged: rest.judged && JSON.stringify(rest.judged),
      });
      return id;
    },
    (subject) => viewComplaint(context, subject),
  );

async function judgeWord(tx: Writer, now: ComplaintView, { judged, said, state }: Body): Promise<Problem[]> {
  const counts = judged ?? now;
  return [
    ...(judged
      ? judgeEffect({ kind: now.details.kind, ...judged, isLookedInto: state !== 'open' }).map(inJudged)
      : []),
    ...(isClosedUntold(counts.effect, now, state) ? [problem('serious-not-looked-into', 'state')] : []),
    ...(await findCustomerNamed(tx, said)).map((found) => ({ ...found, where: 'said' })),
  ];
}

/** A serious one is looked into, and told, before it is put away. */
const isClosedUntold = (
  effect: complaints.ComplaintDetails['effect'],
  now: ComplaintView,
  state: Body['state'],
): boolean => effect === 'serious' && state === 'closed' && now.state === 'open';

const inJudged = (found: Problem): Problem => ({ ...found, where: `judged.${found.where}` });
