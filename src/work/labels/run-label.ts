import type { Market } from '../../contract/index.ts';
import type { Context } from '../context.ts';
import { findRunDurability } from '../filling/best-before.ts';
import type { RunRecords } from '../filling/run-records.ts';
import { findMadeLookup } from '../making/made-lookup.ts';
import { saying } from '../saying.ts';
import { type ComposedPieces, composeLabelPieces } from './compose-pieces.ts';
import { designOf } from './label-design.ts';

/** The label of a run for one market, by what is in its tins and by how its product is labelled today. */
export async function composeRunLabel(
  context: Context,
  records: RunRecords,
  market: Market,
): Promise<ComposedPieces> {
  const { head, details } = records;
  const { db } = context.storage;
  const composed = await composeLabelPieces(context, {
    details,
    design: await designOf(db, head.product_id, details),
    revisionId: head.revision_id,
    market,
    batchNumber: head.number,
    durability: await findRunDurability(context, records),
    made: await findMadeLookup(db, head.batch_id),
    isTrial: head.purpose === 'trial',
  });
  const rejected = head.verdict === 'rejected' ? [saying('label-run-rejected')] : [];
  return { ...composed, missing: [...rejected, ...composed.missing] };
}
