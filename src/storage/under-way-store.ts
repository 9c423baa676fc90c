import { additionOf, selectAdditions } from './batch-record-store.ts';
import { lineNow, selectLinesNow } from './batch-store.ts';
import { judgeLine } from './count-screens.ts';
import type { OrderRow } from './order-store.ts';
import type { Reader } from './storage.ts';

/** Orders of which something is still to be sent, the next promised first. */
export const listOpenOrders = (db: Reader): Promise<OrderRow[]> =>
  db
    .selectFrom('customer_order')
    .selectAll('customer_order')
    .where('customer_order.cancelled', '=', 0)
    .where((where) =>
      where.exists(
        where
          .selectFrom('order_line')
          .select('order_line.id')
          .whereRef('order_line.order_id', '=', 'customer_order.id')
          .where('order_line.units', '>', (units) =>
            units
              .selectFrom('movement')
              .select((sent) =>
                sent.fn
                  .coalesce(
                    sent.fn.sum<number>(sent(sent.val(0), '-', sent.ref('movement.quantity'))),
                    sent.val(0),
                  )
                  .as('units'),
              )
              .whereRef('movement.order_line_id', '=', 'order_line.id'),
          ),
      ),
    )
    .orderBy('wanted_by')
    .orderBy('number')
    .execute();

export interface BatchUnderWay {
  readonly id: string;
  readonly number: string;
  readonly formula_id: string;
  readonly formula_name: string;
  readonly formula_kind: string;
  /** JSON of the revision's details. */
  readonly revision_details: string;
  readonly purpose: string;
  readonly planned_ug: number;
  readonly started_at: string;
}

/** Batches that are being made: neither finished nor given up. */
export const listBatchesUnderWay = (db: Reader): Promise<BatchUnderWay[]> =>
  db
    .selectFrom('batch')
    .innerJoin('formula', 'formula.id', 'batch.formula_id')
    .innerJoin('revision', 'revision.id', 'batch.revision_id')
    .leftJoin('batch_close', 'batch_close.batch_id', 'batch.id')
    .select(['batch.id', 'batch.number', 'batch.formula_id', 'batch.purpose', 'batch.planned_ug'])
    .select(['batch.started_at', 'formula.name as formula_name', 'formula.kind as formula_kind'])
    .select('revision.details as revision_details')
    .where('batch_close.batch_id', 'is', null)
    .orderBy('batch.started_at')
    .orderBy('batch.number')
    .execute();

/** What batches under way have still to take of each lot, as planned. */
export async function listStillToWeigh(db: Reader): Promise<ReadonlyMap<string, number>> {
  const rows = await selectLinesNow(db)
    .leftJoin('batch_close', 'batch_close.batch_id', 'batch_line.batch_id')
    .where('batch_close.batch_id', 'is', null)
    .execute();
  const lines = rows.map(lineNow);
  const ids = [...new Set(lines.map((line) => line.batch_id))];
  const selected =
    ids.length === 0
      ? []
      : await selectAdditions(db).where('addition.batch_id', 'in', ids).orderBy('entry.seq').execute();
  const additions = selected.map(additionOf);
  const left = new Map<string, number>();
  for (const line of lines) {
    const { leftUg } = judgeLine(line, additions);
    if (leftUg > 0) left.set(line.lot_id, (left.get(line.lot_id) ?? 0) + leftUg);
  }
  return left;
}
