import type { Market } from '../contract/index.ts';
import type { SignedDecision } from './checked.ts';

/**
 * A question is about one unknown in each of the markets that it was seen for, and its key lists them all:
 * `GB:law:... | NI:law:...`. A decision holds for what was seen and for nothing else, since the law of a market that
 * nobody looked at may differ.
 */
const BETWEEN = ' | ';

export const questionKey = (marketKeys: readonly string[]): string => marketKeys.join(BETWEEN);

export const marketKeysOf = (key: string): string[] => key.split(BETWEEN);

/** Everything that was ever decided on each unknown of each market, the earliest first. */
export function decisionsByKey(
  decisions: readonly SignedDecision[],
): ReadonlyMap<string, readonly SignedDecision[]> {
  const byKey = new Map<string, SignedDecision[]>();
  for (const decision of decisions) {
    for (const key of marketKeysOf(decision.unknown_key)) {
      const known = byKey.get(key);
      if (known) known.push(decision);
      else byKey.set(key, [decision]);
    }
  }
  return byKey;
}

/** The decision that counts on each: the latest, unless it took the one before back. */
export function standingDecisions(
  byKey: ReadonlyMap<string, readonly SignedDecision[]>,
): ReadonlyMap<string, SignedDecision> {
  const standing = new Map<string, SignedDecision>();
  for (const [key, decisions] of byKey) {
    const latest = decisions.at(-1);
    if (latest && latest.verdict !== 'open-again') standing.set(key, latest);
  }
  return standing;
}

/** Nobody says what else is in it: in each market, for that material. */
export const compositionKey = (market: Market, materialId: string): string =>
  `${market}:composition:${materialId}`;

/** A constituent that none of the tables knows. */
export const unheardKey = (
  market: Market,
  materialId: string,
  { name, cas }: { readonly name: string; readonly cas: string | null },
): string => `${market}:unheard:${materialId}:${name}:${cas ?? ''}`;
