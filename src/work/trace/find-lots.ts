import { done } from '../../core/problem.ts';
import { findLotIdsLike } from '../../storage/index.ts';
import { workshopToday } from '../local-date.ts';
import { viewLotsById } from '../stock/index.ts';
import type { UseCase } from '../use-case.ts';

/** Lots by number, supplier's number, name or the order that they went out with. As many as a person looks through; a longer word finds fewer. */
export const findLots: UseCase<'findLots'> = async (context, { query }) => {
  const ids = await findLotIdsLike(context.storage.db, query.like.trim(), MOST_FOUND);
  if (ids.length === 0) return done([]);
  const views = new Map(
    (await viewLotsById(context.storage.db, ids, await workshopToday(context))).map((lot) => [lot.id, lot]),
  );
  return done(ids.flatMap((id) => views.get(id) ?? []));
};

const MOST_FOUND = 50;
