import type { Stamp } from '../contract/index.ts';
import { problem, type Result } from '../core/problem.ts';
import {
  findClaimOfKept,
  findPerson,
  giveUp,
  type Writer,
  type WriteStory,
  writeOnce,
} from '../storage/index.ts';
import type { AskedContext } from './context.ts';

/**
 * The clocks of a phone and of the workshop's computer may differ by so much (common practice, no source). What lies
 * back is believed, since an entry may reach the file late; what has not happened yet is not.
 */
const CLOCKS_DIFFER_MS = 5 * 60_000;

/**
 * Every use-case's write: the stamp's person must exist and be active and its time have come, the whole is one
 * transaction and one entry of the chain, and the answer is the subject's view as it stands afterwards. The same request again writes nothing and
 * gives that view again; the same stamp on another request is refused. `isTimeAsTold`: the clock is what is asked about.
 */
export async function record<T>(
  context: AskedContext,
  stamp: Stamp,
  carryOut: (tx: Writer, tell: (story: WriteStory) => Promise<void>) => Promise<string>,
  viewOf: (subjectId: string) => Promise<Result<T>>,
  { isTimeAsTold = false }: { readonly isTimeAsTold?: boolean } = {},
): Promise<Result<T>> {
  const once = { ...stamp, asked: context.asked() };
  const now = context.machine.now();
  const written = await writeOnce(context.storage, once, now, async (tx, tell) => {
    if (!isTimeAsTold) refuseFuture(stamp, now);
    if (!context.isAfterAll) await refuseKept(tx, stamp);
    const person = await findPerson(tx, stamp.by);
    if (!person || person.is_active === 0) giveUp(problem('person-unknown', 'stamp.by', { found: stamp.by }));
    return carryOut(tx, tell);
  });
  if (!written.ok) return written;
  return viewOf(written.value.again ? written.value.subjectId : written.value.value);
}

function refuseFuture({ at }: Stamp, now: string): void {
  if (Date.parse(at) > Date.parse(now) + CLOCKS_DIFFER_MS)
    giveUp(problem('entry-in-future', 'stamp.at', { found: at, allowed: now }));
}

/**
 * What a tablet put on the record as a question goes in by its answer alone, also where the tablet, which heard nothing of
 * that, sends the entry again: else what a person set aside would go in all the same.
 */
async function refuseKept(tx: Writer, { id }: Stamp): Promise<void> {
  const claim = await findClaimOfKept(tx, id);
  if (claim) giveUp(problem('kept-as-question', 'stamp.id', { found: id, allowed: claim.recorded_at }));
}

/** Nothing happens to a thing before it is there for it. One clock may go before and the other behind. */
export function refuseBefore({ at }: Stamp, since: string, thing: string): void {
  if (Date.parse(at) < Date.parse(since) - 2 * CLOCKS_DIFFER_MS)
    giveUp(
      problem('entry-before-its-thing', 'stamp.at', { found: at, allowed: since, parameters: { thing } }),
    );
}

/** The answer of writes that only say which thing they made or changed. */
export const viewId = async (id: string): Promise<Result<{ id: string }>> => ({ ok: true, value: { id } });

/** An edit with an old version is refused, and both sides are shown. */
export const changedMeanwhile = (
  where: string,
  seen: number | null | undefined,
  current: number,
  holds: string,
) => problem('changed-meanwhile', where, { found: seen ?? null, allowed: current, parameters: { holds } });

export const thingNotFound = (where: string, id: string) => problem('thing-not-found', where, { found: id });
