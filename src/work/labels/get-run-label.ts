import { done, refused } from '../../core/problem.ts';
import { gatherRun } from '../filling/run-records.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { composeRunLabel } from './run-label.ts';
import { viewLabel } from './view-label.ts';

/** The label of a run, element by element, with each piece at true size as far as there is something to draw. */
export const getRunLabel: UseCase<'getRunLabel'> = async (context, { params: { id = '' }, query }) => {
  const records = await gatherRun(context.storage.db, id);
  if (!records) return refused(thingNotFound('id', id));
  return done(viewLabel(query.market, await composeRunLabel(context, records, query.market)));
};
