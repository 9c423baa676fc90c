import { listStanding, viewCheck } from '../../check/index.ts';
import type { Market } from '../../contract/index.ts';
import { done, problem, type Result, refused } from '../../core/problem.ts';
import { findRevision } from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { checkShelf } from './check-shelf.ts';
import { ALL_MARKETS, marketsToJudge, readSoldIn } from './read-sold-in.ts';
import { runCheck } from './run-check.ts';

export const checkRevision: UseCase<'checkRevision'> = async (context, { params: { id = '' }, query }) => {
  const { db } = context.storage;
  const revision = await findRevision(db, id);
  if (!revision) return refused(thingNotFound('id', id));
  const sold = await readSoldIn(db, revision.formula_id);
  const markets = query.markets === undefined ? done(marketsToJudge(sold)) : readMarkets(query.markets);
  if (!markets.ok) return markets;
  const checked = await runCheck(context, id, markets.value);
  if (!checked.ok) return checked;
  const shelf = await checkShelf(context, id, markets.value, listStanding(checked.value));
  return done({ ...viewCheck(checked.value, sold), shelf });
};

function readMarkets(text: string): Result<Market[]> {
  const markets = [...new Set(text.split(',').map((market) => market.trim()))];
  const known: readonly string[] = ALL_MARKETS;
  const unknown = markets.find((market) => !known.includes(market));
  return unknown === undefined
    ? done(markets as Market[])
    : refused(problem('value-not-one-of', 'markets', { found: unknown, allowed: ALL_MARKETS.join(', ') }));
}
