import { done, refused } from '../../core/problem.ts';
import { listLabelPrints } from '../../storage/index.ts';
import { gatherRun } from '../filling/index.ts';
import { openRevision } from '../formulas/index.ts';
import { composeRunLabel } from '../labels/index.ts';
import { findMadeLookup } from '../making/made-lookup.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewAnswers } from './view-answers.ts';
import { viewPrinted } from './view-printed.ts';

/** By the batch number on a tin: from the materials of the lots that went into it, bases and all. */
export const getRunAnswers: UseCase<'getRunAnswers'> = async (context, { params: { id = '' } }) => {
  const { db } = context.storage;
  const records = await gatherRun(db, id);
  if (!records) return refused(thingNotFound('id', id));
  const { head, details, markets } = records;
  const made = await findMadeLookup(db, head.batch_id);
  const opened = await openRevision(db, head.revision_id, made);
  if (!opened.ok) return opened;
  const ingredients = [];
  const prints = await listLabelPrints(db, head.id);
  for (const market of markets) {
    const composed = await composeRunLabel(context, records, market);
    ingredients.push(await viewPrinted(context, { records, market, composed, prints }));
  }
  return done(
    viewAnswers({
      productId: head.product_id,
      productName: details.name,
      batchNumber: head.number,
      opened: opened.value,
      ingredients,
    }),
  );
};
