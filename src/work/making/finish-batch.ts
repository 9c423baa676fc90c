import type { formulas } from '../../contract/index.ts';
import { problem } from '../../core/problem.ts';
import { microgramsFromGrams } from '../../core/quantity/index.ts';
import {
  type BatchHead,
  findBatchRevisionDetails,
  findWithoutRecipe,
  giveUp,
  insertBatchClose,
  insertLot,
  insertLotStatus,
  insertMovements,
  listAdditions,
  listBatchLines,
  listLotsAtHand,
  type NamedBatchLine,
  orGiveUp,
  type SignedAddition,
  shelfPlaceId,
  type Writer,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { inside } from '../inside.ts';
import { localDate, workshopZone } from '../local-date.ts';
import { newMovement } from '../new-movement.ts';
import { gramsText } from '../quantity-text.ts';
import { record } from '../record.ts';
import { refuseOpenClaims } from '../refuse-open-claims.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { findAllowedYield, roundedGrams } from './allowed-yield.ts';
import { viewBatch } from './batch-view.ts';
import { findMadeLotDates, type MadeLotDates } from './made-lot.ts';
import { openBatch } from './open-batch.ts';
import { weighState } from './weigh-state.ts';

type Body = RequestOf<'finishBatch'>['body'];

/** Making is over: what there is becomes a lot; a base waits in quarantine until a person says that it is firm. */
export const finishBatch: UseCase<'finishBatch'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await openBatch(tx, params.id ?? '', body.stamp);
      if (await findWithoutRecipe(tx, batch.id))
        giveUp(problem('batch-without-recipe', `batch ${batch.number}`));
      await refuseOpenClaims(tx, 'batch', batch.id, `batch ${batch.number}`);
      const yieldUg = orGiveUp(microgramsFromGrams(body.yieldGrams, 'yieldGrams'));
      const additions = await refuseUnfinished(tx, batch, yieldUg);
      refuseHalfGone(additions, yieldUg, body.isYieldSure);
      const lot = await planMadeLot(context, tx, batch, body, additions);
      await tell({
        kind: 'batch-made',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: { number: batch.number, yieldGrams: gramsText(yieldUg), lot },
      });
      await writeMadeLot(context, tx, lot, { batch, yieldUg, entryId: body.stamp.id });
      return batch.id;
    },
    (id) => viewBatch(context, id),
  );

/** Everything weighed in, and not more out than in. */
async function refuseUnfinished(tx: Writer, batch: BatchHead, yieldUg: number): Promise<SignedAddition[]> {
  const lines = await listBatchLines(tx, batch.id);
  const all = await listAdditions(tx, batch.id);
  const additions = all.filter((row) => !row.is_struck);
  const missing = lines.filter((line) => !weighState(line, all).isDone);
  if (missing.length > 0) {
    const names = missing.map((line) => line.item_name).join(', ');
    giveUp(
      problem('additions-missing', `batch ${batch.number}`, {
        found: missing.length,
        parameters: { items: names },
      }),
    );
  }
  refuseYieldAbove(lines, additions, yieldUg);
  return additions;
}

/** Not more out than in, the errors of the weighings aside. */
export function refuseYieldAbove(
  lines: readonly NamedBatchLine[],
  additions: readonly SignedAddition[],
  yieldUg: number,
): void {
  const { inputUg, mostUg } = findAllowedYield(lines, additions);
  if (yieldUg > mostUg) {
    giveUp(
      problem('yield-above-input', 'yieldGrams', {
        found: gramsText(yieldUg),
        allowed: roundedGrams(mostUg),
        parameters: { input: gramsText(inputUg) },
      }),
    );
  }
}

/** Less than half of what went in is rather a slip of the figure, and would be lost for good (common practice, no source). */
export function refuseHalfGone(additions: readonly SignedAddition[], yieldUg: number, isSure: boolean): void {
  const inputUg = additions.reduce((sum, row) => sum + row.actual_ug, 0);
  if (isSure || yieldUg * 2 >= inputUg) return;
  giveUp(
    problem('yield-half-gone', 'yieldGrams', { found: gramsText(yieldUg), allowed: gramsText(inputUg) }),
  );
}

interface PlannedLot extends MadeLotDates {
  readonly id: string;
  readonly number: string;
  readonly status: 'quarantine' | 'released';
  readonly since: string;
}

export async function planMadeLot(
  context: Context,
  tx: Writer,
  batch: BatchHead,
  body: Pick<Body, 'stamp'>,
  additions: readonly SignedAddition[],
): Promise<PlannedLot> {
  const details = JSON.parse(await findBatchRevisionDetails(tx, batch.id)) as formulas.RevisionDetails;
  const on = localDate(body.stamp.at, await workshopZone(inside(context, tx)));
  const wentIn = await listLotsAtHand(tx, { lotIds: [...new Set(additions.map((row) => row.lot_id))] });
  const isBase = batch.formula_kind === 'base';
  const dates = findMadeLotDates(batch.formula_kind, details, { at: body.stamp.at, on }, wentIn);
  return {
    id: context.machine.newId(),
    number: isBase ? batch.number : bowlNumber(batch.number),
    // A base that never sets has nothing to wait for.
    status: isBase && dates.firm_from !== null ? 'quarantine' : 'released',
    since: on,
    ...dates,
  };
}

/** Tins carry the batch's own number, so the mixture in its bowl needs another one. */
const bowlNumber = (batchNumber: string): string => `${batchNumber} in the bowl`;

export async function writeMadeLot(
  context: Context,
  tx: Writer,
  { status, ...lot }: PlannedLot,
  made: { readonly batch: BatchHead; readonly yieldUg: number; readonly entryId: string },
): Promise<void> {
  const { batch, yieldUg, entryId } = made;
  await insertLot(tx, {
    ...lot,
    entry_id: entryId,
    item_kind: 'formula',
    item_id: batch.formula_id,
    unit: 'g',
    found_at_opening: 0,
    supplier: '',
    supplier_lot: null,
    paid: null,
    received: yieldUg,
    batch_id: batch.id,
    filling_run_id: null,
    version: 1,
  });
  await insertLotStatus(tx, { entry_id: entryId, lot_id: lot.id, status, reason: '' });
  await insertMovements(tx, [
    newMovement(context, entryId, {
      lot_id: lot.id,
      place_id: await shelfPlaceId(tx),
      kind: 'made',
      quantity: yieldUg,
      batch_id: batch.id,
    }),
  ]);
  await insertBatchClose(tx, {
    entry_id: entryId,
    batch_id: batch.id,
    outcome: 'made',
    yield_ug: yieldUg,
    lot_id: lot.id,
    reason: '',
  });
}
