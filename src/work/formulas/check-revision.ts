import { EVERYWHERE, listStanding, viewCheck } from '../../check/index.ts';
import { done, refused } from '../../core/problem.ts';
import { findRevision } from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { askOfLots } from './ask-of-lots.ts';
import { checkShelf } from './check-shelf.ts';
import { readMarkets } from './read-markets.ts';
import { readSoldIn } from './read-sold-in.ts';
import { runCheck } from './run-check.ts';

export const checkRevision: UseCase<'checkRevision'> = async (context, { params: { id = '' }, query }) => {
  const { db } = context.storage;
  const revision = await findRevision(db, id);
  if (!revision) return refused(thingNotFound('id', id));
  const sold = await readSoldIn(db, revision.formula_id);
  const markets = readMarkets(query.markets, sold);
  if (!markets.ok) return markets;
  const checked = await runCheck(context, id, markets.value, { products: sold.products });
  if (!checked.ok) return checked;
  const everywhere = await runCheck(context, id, EVERYWHERE, { products: sold.products });
  if (!everywhere.ok) return everywhere;
  const shelf = await checkShelf(context, {
    revisionId: id,
    markets: markets.value,
    decisions: listStanding(checked.value),
  });
  const lotQuestions = await askOfLots(context, id, markets.value);
  return done({ ...viewCheck(checked.value, everywhere.value, sold), shelf, lotQuestions });
};
