import { done, problem, type Result, refused } from '../../core/problem.ts';
import { findPinKey, isPin, nameOfKey } from '../../machine/index.ts';
import { countPinTry, findPin, forgetPinTries } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { nextTryAt, whyWait } from './pin-wait.ts';

export interface PinAsked {
  readonly deviceId: string;
  readonly personId: string;
  readonly pin: string;
  /** The field that it was typed in. */
  readonly where: string;
  /** Whether this very request was carried out before: sent again, it holds the old PIN rightly. Asked as one more try. */
  readonly isCarriedOut?: () => Promise<boolean>;
}

/**
 * Whether it is the person's PIN. A try counts as wrong before it is looked at, on disk: pulling the plug, or sending a
 * hundred at once, gains nobody another one.
 */
export async function checkPin(context: Context, asked: PinAsked): Promise<Result<null>> {
  const { storage, machine } = context;
  const { deviceId, personId } = asked;
  const now = machine.now();
  const kept = await findPin(storage.db, personId);
  const key = findPinKey(storage.file);
  if (kept === undefined || key === null || kept.key_name !== nameOfKey(key))
    return refused(problem('pin-not-set', 'stamp.by', { found: personId }));
  const counted = await countPinTry(storage.db, { deviceId, personId, now }, (before) =>
    whyWait({ wrong: before.wrong, lastAt: before.last_at }, now),
  );
  if (!counted.ok) return counted;
  if ((await isPin(asked.pin, key, kept)) || (await asked.isCarriedOut?.())) {
    await forgetPinTries(storage.db, { personId, deviceId });
    return done(null);
  }
  return refused(wrongPin(asked.where, counted.value.wrong, now));
}

function wrongPin(where: string, wrong: number, now: string) {
  const at = nextTryAt({ wrong, lastAt: now });
  if (at === 'never') return problem('pin-locked', where, { found: wrong });
  return at === null ? problem('pin-wrong', where) : problem('pin-wrong-wait', where, { allowed: at });
}
