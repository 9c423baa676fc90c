import type { Checked, SignedDecision } from './checked.ts';
import { marketKeysOf } from './unknown-key.ts';

/**
 * Decisions that count on the formula, the earliest first: what lapsed there lapsed for every batch of it, and one that
 * lapsed in one of its markets is asked again for all of them.
 */
export function listStanding({ decisions, everDecided, lapsed }: Checked): SignedDecision[] {
  const said = [...everDecided].filter(([key]) => decisions.has(key)).flatMap(([, each]) => each);
  return [...new Map(said.map((decision) => [decision.entry_id, decision])).values()].filter(
    ({ unknown_key }) => !marketKeysOf(unknown_key).some((key) => lapsed.has(key)),
  );
}
