import type { orders } from '../../contract/index.ts';
import { problem } from '../../core/problem.ts';
import {
  type BatchHead,
  countRunsOfBatch,
  type FillingRunRow,
  findBatch,
  findProduct,
  findScale,
  giveUp,
  insertFillWay,
  insertRun,
  listLotsAtHand,
  type Writer,
} from '../../storage/index.ts';
import { whyHeld } from '../held-scale.ts';
import { inside } from '../inside.ts';
import { workshopToday } from '../local-date.ts';
import { whyNotUsable } from '../lot-use.ts';
import { gramsText } from '../quantity-text.ts';
import { readProductDetails } from '../read-product-details.ts';
import { record, refuseBefore, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { measureWay } from './measure-way.ts';
import { runNumber } from './run-number.ts';
import { viewRun } from './run-view.ts';
import { tellWay } from './tell-way.ts';

/** One batch, or part of it, into one product. Product, aim and the scale's error stand from now on as they are now. */
export const startRun: UseCase<'startRun'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await fillableBatch(tx, body.batchId, await workshopToday(inside(context, tx)));
      refuseBefore(body.stamp, batch.closed_at ?? batch.started_at, `batch ${batch.number}`);
      const details = await fillableProduct(tx, body.productId, batch);
      const scale = (await findScale(tx, body.scaleId)) ?? giveUp(thingNotFound('scaleId', body.scaleId));
      const held = await whyHeld(tx, scale.id, {
        at: body.stamp.at,
        where: 'scaleId',
        code: 'scale-must-pass',
      });
      if (held) giveUp(held);
      const way = await measureWay(tx, { productId: body.productId, details, scale }, body);
      const row = {
        id: context.machine.newId(),
        entry_id: body.stamp.id,
        number: runNumber(batch.number, await countRunsOfBatch(tx, batch.id)),
        batch_id: batch.id,
        product_id: body.productId,
        product_details: JSON.stringify(details),
        wanted: body.wanted,
        scale_id: body.scaleId,
        scale_error_ug: way.error_ug,
        aim_ug: way.aim_ug,
        tare_ug: way.tare_ug,
        started_at: context.machine.now(),
      };
      await tell({
        kind: 'run-started',
        subjectKind: 'filling-run',
        subjectId: row.id,
        payload: { ...storyOf(row, details), ...tellWay(way) },
      });
      await insertRun(tx, row);
      await insertFillWay(tx, { entry_id: body.stamp.id, filling_run_id: row.id, ...way });
      return row.id;
    },
    (id) => viewRun(context, id),
  );

const storyOf = (row: FillingRunRow, product: orders.ProductDetails) => ({
  number: row.number,
  batchId: row.batch_id,
  productId: row.product_id,
  product,
  wanted: row.wanted,
  scaleId: row.scale_id,
  scaleErrorGrams: gramsText(row.scale_error_ug),
  aimGrams: gramsText(row.aim_ug),
  tareGrams: row.tare_ug === null ? null : gramsText(row.tare_ug),
});

/** A mixture that is made, with something left in its bowl that may be used. */
async function fillableBatch(tx: Writer, id: string, day: string): Promise<BatchHead> {
  const batch = await findBatch(tx, id);
  if (!batch) giveUp(thingNotFound('batchId', id));
  if (batch.formula_kind === 'base') giveUp(problem('base-not-filled', 'batchId', { found: batch.number }));
  if (batch.outcome !== 'made' || batch.lot_id === null) {
    giveUp(
      problem('batch-not-made', `batch ${batch.number}`, {
        found: batch.outcome ?? 'making',
        allowed: 'made',
      }),
    );
  }
  const [bowl] = await listLotsAtHand(tx, { lotIds: [batch.lot_id] });
  const hindrance = bowl && whyNotUsable(bowl, day, batch.purpose);
  if (hindrance) giveUp(hindrance);
  if (!bowl || bowl.on_hand <= 0) giveUp(problem('bowl-empty', `batch ${batch.number}`));
  return batch;
}

async function fillableProduct(tx: Writer, id: string, batch: BatchHead): Promise<orders.ProductDetails> {
  const product = await findProduct(tx, id);
  if (!product) giveUp(thingNotFound('productId', id));
  const details = readProductDetails(product.details);
  if (product.formula_id !== batch.formula_id) {
    giveUp(
      problem('product-of-another-formula', 'productId', {
        found: product.name,
        allowed: batch.formula_name,
        parameters: { batch: batch.number },
      }),
    );
  }
  if (details.isWithdrawn) giveUp(problem('product-withdrawn', 'productId', { found: product.name }));
  return details;
}
