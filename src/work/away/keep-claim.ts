import { problem } from '../../core/problem.ts';
import { findClaim, findClaimOfKept, giveUp, insertClaim } from '../../storage/index.ts';
import { record } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { answerClaimView } from './answer-claim-view.ts';
import { subjectOf } from './request-of-claim.ts';

type Body = RequestOf<'keepClaim'>['body'];

/**
 * What a tablet did while it was away, and could not be entered when it came: kept whole, with why. It is kept once,
 * however often it is sent, and whatever its clock says, since a wrong clock is one of the reasons.
 */
export const keepClaim: UseCase<'keepClaim'> = async (context, { body }) => {
  const { db } = context.storage;
  const before = await findClaimOfKept(db, body.entry.id);
  if (before) return answerClaimView(db, before);
  const kept = await record(
    context,
    body.stamp,
    async (tx, tell) => {
      // From two tabs at once: the one that came first stands.
      if (await findClaimOfKept(tx, body.entry.id)) giveUp(keptBefore(body.entry.id));
      const row = rowOf(body);
      const { entry_id, request, problems, ...told } = row;
      await tell({
        kind: 'claim-kept',
        subjectKind: 'claim',
        subjectId: entry_id,
        payload: { ...told, request: JSON.parse(request), problems: JSON.parse(problems) },
      });
      await insertClaim(tx, row);
      return entry_id;
    },
    async (id) => answerClaimView(db, await findClaim(db, id)),
    { isTimeAsTold: true },
  );
  const isThere = !kept.ok && kept.problems.some(({ code }) => code === keptBefore('').code);
  return isThere ? answerClaimView(db, await findClaimOfKept(db, body.entry.id)) : kept;
};

const keptBefore = (id: string) => problem('kept-as-question', 'entry.id', { found: id });

function rowOf({ stamp, entry, problems }: Body) {
  const own = entry.body.stamp as { readonly by?: unknown } | undefined;
  const subject = subjectOf(entry.route, entry.params);
  return {
    entry_id: stamp.id,
    kept_id: entry.id,
    route: entry.route,
    subject_kind: subject.kind,
    subject_id: subject.id,
    happened_at: entry.at,
    by_id: String(own?.by ?? stamp.by),
    // As the workshop knows it, whatever it called itself in the entry.
    device: stamp.device,
    request: JSON.stringify({ params: entry.params, body: entry.body }),
    problems: JSON.stringify(problems),
  };
}
