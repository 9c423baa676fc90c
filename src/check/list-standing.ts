import type { Checked, SignedDecision } from './checked.ts';

/** Decisions that count on the formula, the earliest first: what lapsed there lapsed for every batch of it. */
export function listStanding({ decisions, everDecided, lapsed }: Checked): SignedDecision[] {
  const said = [...everDecided]
    .filter(([key]) => decisions.has(key) && !lapsed.has(key))
    .flatMap(([, each]) => each);
  return [...new Map(said.map((decision) => [decision.entry_id, decision])).values()];
}
