import type { orders, stock } from '../../contract/index.ts';
import { findAim } from '../../core/filling/index.ts';
import { problem } from '../../core/problem.ts';
import { exact, microgramsFromGrams } from '../../core/quantity/index.ts';
import {
  type BatchHead,
  countRunsOfBatch,
  type FillingRunRow,
  findBatch,
  findMaterial,
  findProduct,
  findScale,
  giveUp,
  insertRun,
  listLotsAtHand,
  orGiveUp,
  type ScaleRow,
  type Writer,
} from '../../storage/index.ts';
import { inside } from '../inside.ts';
import { workshopToday } from '../local-date.ts';
import { whyNotUsable } from '../lot-use.ts';
import { gramsText } from '../quantity-text.ts';
import { readProductDetails } from '../read-product-details.ts';
import { record, refuseBefore, thingNotFound } from '../record.ts';
import { findWorstErrorUg } from '../scale-error.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { runNumber } from './run-number.ts';
import { viewRun } from './run-view.ts';

type Body = RequestOf<'startRun'>['body'];

/** One batch, or part of it, into one product. Product, aim and the scale's error stand from now on as they are now. */
export const startRun: UseCase<'startRun'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await fillableBatch(tx, body.batchId, await workshopToday(inside(context, tx)));
      refuseBefore(body.stamp, batch.closed_at ?? batch.started_at, `batch ${batch.number}`);
      const details = await fillableProduct(tx, body.productId, batch);
      const measures = await findMeasures(tx, body, details);
      const row = {
        id: context.machine.newId(),
        entry_id: body.stamp.id,
        number: runNumber(batch.number, await countRunsOfBatch(tx, batch.id)),
        batch_id: batch.id,
        product_id: body.productId,
        product_details: JSON.stringify(details),
        wanted: body.wanted,
        scale_id: body.scaleId,
        ...measures,
        started_at: context.machine.now(),
      };
      await tell({
        kind: 'run-started',
        subjectKind: 'filling-run',
        subjectId: row.id,
        payload: storyOf(row, details),
      });
      await insertRun(tx, row);
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

/** Tare as given, else as the tin is known; the scale's worst error at the load that tin and filling will be; the aim. */
async function findMeasures(tx: Writer, body: Body, details: orders.ProductDetails) {
  const scale = await findScale(tx, body.scaleId);
  if (!scale) giveUp(thingNotFound('scaleId', body.scaleId));
  const tin = await findMaterial(tx, details.tinId);
  const tare = body.tareGrams ?? (tin && (JSON.parse(tin.details) as stock.MaterialDetails).tareGrams);
  const tareUg = tare == null ? null : orGiveUp(microgramsFromGrams(tare, 'tareGrams'));
  refuseOverload(scale, details, tareUg ?? 0);
  const errorUg = orGiveUp(findWorstErrorUg(scale, loadOf(scale, details, tareUg)));
  const aim = details.aimGrams ?? findAim(details.declaredGrams, gramsText(errorUg), scale.readability_grams);
  return {
    scale_error_ug: errorUg,
    aim_ug: orGiveUp(microgramsFromGrams(aim, 'aimGrams')),
    tare_ug: tareUg,
  };
}

/**
 * What stands on the scale when a tin is weighed. Where nobody knows yet what the tin weighs, the largest load that the
 * scale carries: an error is never made smaller than it is. A tare of nought means that the scale was set to nought
 * with the tin on it, and errors of a net value then go by the net load (OIML R 76-1, 3.5.3.3, from memory).
 */
const loadOf = (scale: ScaleRow, details: orders.ProductDetails, tareUg: number | null) =>
  tareUg === null ? exact(scale.capacity_grams) : exact(details.declaredGrams).plus(gramsText(tareUg));

function refuseOverload(scale: ScaleRow, details: orders.ProductDetails, tareUg: number): void {
  const load = loadOf(scale, details, tareUg);
  if (load.gt(scale.capacity_grams)) {
    giveUp(
      problem('scale-too-small', 'scaleId', {
        found: load.toFixed(),
        allowed: scale.capacity_grams,
        parameters: { scale: scale.name },
      }),
    );
  }
}
