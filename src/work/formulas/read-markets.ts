import type { SoldIn } from '../../check/index.ts';
import type { Market } from '../../contract/index.ts';
import { done, problem, type Result, refused } from '../../core/problem.ts';
import { ALL_MARKETS, marketsToJudge } from './read-sold-in.ts';

/** Markets that somebody asks for, with commas between; left out: where it is sold. */
export function readMarkets(text: string | undefined, sold: SoldIn): Result<readonly Market[]> {
  if (text === undefined) return done(marketsToJudge(sold));
  const markets = [...new Set(text.split(',').map((market) => market.trim()))];
  const known: readonly string[] = ALL_MARKETS;
  const unknown = markets.find((market) => !known.includes(market));
  return unknown === undefined
    ? done(markets as Market[])
    : refused(problem('value-not-one-of', 'markets', { found: unknown, allowed: ALL_MARKETS.join(', ') }));
}
