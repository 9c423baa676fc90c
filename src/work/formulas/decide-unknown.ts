import { type Checked, isOfLot, listUnknowns, type MarketUnknown, marketKeysOf } from '../../check/index.ts';
import { digestOf } from '../../core/digest/index.ts';
import { problem } from '../../core/problem.ts';
import { giveUp, insertDecision, orGiveUp, type Writer } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { inside } from '../inside.ts';
import { record, viewId } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { unknownsOfLots } from './ask-of-lots.ts';
import { ALL_MARKETS } from './read-sold-in.ts';
import { runCheck } from './run-check.ts';

/**
 * A named person decides an unknown, once for this revision, with a reason. A decision is changed, or taken back so
 * that the question is open again, only by naming the one that it corrects; both stay readable, and the latest counts. It holds for the composition that it was taken upon
 * (see decided-upon) and lapses with it.
 */
export const decideUnknown: UseCase<'decideUnknown'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const revisionId = params.id ?? '';
      const decided = await readDecided(context, tx, revisionId, body);
      const { key, verdict, reason, corrects } = body;
      await tell({
        kind: `unknown-${verdict}`,
        subjectKind: 'revision',
        subjectId: revisionId,
        // The compositions in full, each once: the chain alone tells upon what it was decided.
        payload: {
          key,
          verdict,
          reason,
          corrects,
          upon: Object.fromEntries(decided.map(({ digest, upon }) => [digest, upon])),
        },
      });
      await insertDecision(tx, {
        entry_id: body.stamp.id,
        revision_id: revisionId,
        unknown_key: key,
        verdict,
        reason,
        upon: JSON.stringify(Object.fromEntries(decided.map((unknown) => [unknown.key, unknown.digest]))),
      });
      return revisionId;
    },
    viewId,
  );

/** The unknowns that the decision is on, each as its market asks it; what is unfit to be decided is refused. */
async function readDecided(
  context: Context,
  tx: Writer,
  revisionId: string,
  { key, verdict, corrects, upon }: RequestOf<'decideUnknown'>['body'],
): Promise<readonly MarketUnknown[]> {
  const checked = orGiveUp(await runCheck(inside(context, tx), revisionId, ALL_MARKETS));
  const keys = marketKeysOf(key);
  const ofLots = keys.some(isOfLot) ? await unknownsOfLots(inside(context, tx), revisionId, ALL_MARKETS) : [];
  const open = new Map([...listUnknowns(checked), ...ofLots].map((unknown) => [unknown.key, unknown]));
  const missing = keys.find((one) => !open.has(one));
  if (missing !== undefined) giveUp(problem('unknown-not-here', 'key', { found: missing }));
  const decided = keys.flatMap((one) => open.get(one) ?? []);
  const substance = decided[0]?.substance ?? '';
  if (upon !== undefined && upon !== digestOf(decided.map((unknown) => unknown.digest)))
    giveUp(problem('unknown-changed-meanwhile', 'key', { parameters: { substance } }));
  refuseSecond(checked, keys, { corrects, substance });
  if (verdict === 'open-again' && !keys.some((one) => checked.decisions.has(one)))
    giveUp(problem('corrects-nothing', 'corrects', { found: corrects ?? null }));
  return decided;
}

/** A decision that lapsed may be named as the one that is corrected, and need not be. */
function refuseSecond(
  { decisions, lapsed }: Checked,
  keys: readonly string[],
  { corrects, substance }: { readonly corrects: string | undefined; readonly substance: string },
): void {
  const standing = keys.flatMap((one) => decisions.get(one) ?? []);
  const other = standing.find((decision) => decision.entry_id !== corrects);
  if (other)
    giveUp(
      problem('decided-already', 'key', {
        found: other.verdict,
        parameters: { substance, by: other.person_name, reason: other.reason },
      }),
    );
  const gone = keys.flatMap((one) => lapsed.get(one) ?? []);
  if (corrects !== undefined && ![...standing, ...gone].some(({ entry_id }) => entry_id === corrects))
    giveUp(problem('corrects-nothing', 'corrects', { found: corrects }));
}
