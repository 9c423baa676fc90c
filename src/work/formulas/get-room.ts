import { findRoom, readFacts, viewRoom } from '../../check/index.ts';
import { done, refused } from '../../core/problem.ts';
import { findRevision } from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { getCheckFacts } from './get-check-facts.ts';
import { readMarkets } from './read-markets.ts';
import { readSoldIn } from './read-sold-in.ts';
import { viewRevision } from './revision-view.ts';

/** Worked out by the code that the pages work it out with, from the same facts. */
export const getRoom: UseCase<'getRoom'> = async (context, { params: { id = '' }, query }) => {
  const { db } = context.storage;
  const revision = await findRevision(db, id);
  if (!revision) return refused(thingNotFound('id', id));
  const markets = readMarkets(query.markets, await readSoldIn(db, revision.formula_id));
  if (!markets.ok) return markets;
  const read = await getCheckFacts(context, {
    params: { id: revision.formula_id },
    query: undefined,
    body: undefined,
  });
  if (!read.ok) return read;
  const written = await viewRevision(db, id);
  if (!written.ok) return written;
  const { details } = written.value;
  const facts = readFacts(read.value);
  const found = findRoom(facts, details, markets.value);
  return found.ok ? done(viewRoom(facts, details, found.value)) : found;
};
