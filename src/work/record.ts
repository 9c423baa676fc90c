import type { Stamp } from '../contract/index.ts';
import { problem, type Result } from '../core/problem.ts';
import { findPerson, giveUp, type Writer, type WriteStory, writeOnce } from '../storage/index.ts';
import type { AskedContext } from './context.ts';

/**
 * Every use-case's write: the stamp's person must exist and be active, the whole is one transaction and one entry of
 * the chain, and the answer is the subject's view as it stands afterwards. The same request again writes nothing and
 * gives that view again; the same stamp on another request is refused.
 */
export async function record<T>(
  context: AskedContext,
  stamp: Stamp,
  carryOut: (tx: Writer, tell: (story: WriteStory) => Promise<void>) => Promise<string>,
  viewOf: (subjectId: string) => Promise<Result<T>>,
): Promise<Result<T>> {
  const once = { ...stamp, asked: context.asked() };
  const written = await writeOnce(context.storage, once, context.machine.now(), async (tx, tell) => {
    const person = await findPerson(tx, stamp.by);
    if (!person || person.is_active === 0) giveUp(problem('person-unknown', 'stamp.by', { found: stamp.by }));
    return carryOut(tx, tell);
  });
  if (!written.ok) return written;
  return viewOf(written.value.again ? written.value.subjectId : written.value.value);
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
