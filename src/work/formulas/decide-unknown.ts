import { problem } from '../../core/problem.ts';
import { giveUp, insertDecision, orGiveUp, type Writer } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { inside } from '../inside.ts';
import { record, viewId } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { listUnknowns } from './list-unknowns.ts';
import { runCheck } from './run-check.ts';
import { marketKeysOf } from './unknown-key.ts';

/**
 * A named person decides an unknown, once for this revision, with a reason. A decision is changed only by naming the
 * one that it corrects; both stay readable, and the latest counts.
 */
export const decideUnknown: UseCase<'decideUnknown'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const revisionId = params.id ?? '';
      await refuseUnfit(context, tx, revisionId, body);
      const { key, verdict, reason, corrects } = body;
      await tell({
        kind: `unknown-${verdict}`,
        subjectKind: 'revision',
        subjectId: revisionId,
        payload: { key, verdict, reason, corrects },
      });
      await insertDecision(tx, {
        entry_id: body.stamp.id,
        revision_id: revisionId,
        unknown_key: key,
        verdict,
        reason,
      });
      return revisionId;
    },
    viewId,
  );

async function refuseUnfit(
  context: Context,
  tx: Writer,
  revisionId: string,
  { key, corrects }: RequestOf<'decideUnknown'>['body'],
): Promise<void> {
  const checked = orGiveUp(await runCheck(inside(context, tx), revisionId, ['GB', 'NI', 'EU']));
  const open = new Map(listUnknowns(checked).map((unknown) => [unknown.key, unknown.substance]));
  const keys = marketKeysOf(key);
  const missing = keys.find((one) => !open.has(one));
  if (missing !== undefined) giveUp(problem('unknown-not-here', 'key', { found: missing }));
  const standing = keys.flatMap((one) => checked.decisions.get(one) ?? []);
  const other = standing.find((decision) => decision.entry_id !== corrects);
  if (other)
    giveUp(
      problem('decided-already', 'key', {
        found: other.verdict,
        parameters: { substance: open.get(keys[0] ?? '') ?? '', by: other.person_name, reason: other.reason },
      }),
    );
  if (corrects !== undefined && standing.length === 0)
    giveUp(problem('corrects-nothing', 'corrects', { found: corrects }));
}
