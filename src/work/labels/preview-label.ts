import type { orders } from '../../contract/index.ts';
import { done, problem, refused } from '../../core/problem.ts';
import { findProduct } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { findRunDurability } from '../filling/best-before.ts';
import { gatherRun, type RunRecords } from '../filling/run-records.ts';
import { listRevisionsInForce } from '../formulas/index.ts';
import { workshopToday } from '../local-date.ts';
import { findMadeLookup } from '../making/made-lookup.ts';
import { readProductDetails } from '../read-product-details.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { composeLabelPieces } from './compose-pieces.ts';
import { exampleLabel } from './example-label.ts';
import { viewLabel } from './view-label.ts';

/** How a design would look: with batch and date of a run, or with examples of both. Nothing is written. */
export const previewLabel: UseCase<'previewLabel'> = async (context, { params: { id = '' }, body }) => {
  const { db } = context.storage;
  const product = await findProduct(db, id);
  if (!product) return refused(thingNotFound('id', id));
  const run = body.runId === null ? undefined : await gatherRun(db, body.runId);
  if (body.runId !== null && run?.head.product_id !== id) return refused(thingNotFound('runId', body.runId));
  const details = readProductDetails(product.details);
  const of = run ? await ofRun(context, run) : await ofNone(context, details);
  if (of === null) return refused(problem('product-without-recipe', 'id', { found: details.name }));
  const { market, details: design } = body;
  return done(viewLabel(market, await composeLabelPieces(context, { ...of, design, market })));
};

async function ofRun(context: Context, records: RunRecords) {
  const { head, details } = records;
  return {
    details,
    revisionId: head.revision_id,
    batchNumber: head.number,
    durability: await findRunDurability(context, records),
    made: await findMadeLookup(context.storage.db, head.batch_id),
    isTrial: head.purpose === 'trial',
  };
}

/** As if it were made today, by the recipe that is in force. */
async function ofNone(context: Context, details: orders.ProductDetails) {
  const inForce = await listRevisionsInForce(context.storage.db);
  const revisionId = inForce.find((head) => head.formula_id === details.formulaId)?.id;
  if (revisionId === undefined) return null;
  return exampleLabel(details, revisionId, await workshopToday(context));
}
