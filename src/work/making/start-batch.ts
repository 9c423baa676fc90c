import { type Problem, problem } from '../../core/problem.ts';
import { microgramsFromGrams } from '../../core/quantity/index.ts';
import {
  type BatchLineRow,
  type BatchRow,
  giveUp,
  insertBatch,
  lastBatchNumber,
  orGiveUp,
  type Writer,
} from '../../storage/index.ts';
import { say } from '../../words/index.ts';
import { inside } from '../inside.ts';
import { gramsText } from '../quantity-text.ts';
import { record } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';
import { type LaidBatch, type LaidRow, layOutBatch } from './lay-out-batch.ts';
import type { BatchWish } from './size-wish.ts';
import type { WeighingNote } from './weighing-note.ts';

/**
 * Starts a batch by its plan, laid out anew on what is there now. For sale only without hindrances; what is short, or
 * too large for the bowl, does not start at all: nothing is made smaller in silence. Nothing is reserved.
 */
export const startBatch: UseCase<'startBatch'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      // By this computer's clock: what the sender's clock says must not make a lot usable.
      const now = context.machine.now();
      const laid = orGiveUp(await layOutBatch(inside(context, tx), body.wish, now));
      const hindrances = findHindrances(body.wish, laid);
      if (hindrances.length > 0) giveUp(...hindrances);
      const batch = {
        ...(await planRow(tx, body.wish, laid)),
        id: context.machine.newId(),
        entry_id: body.stamp.id,
        started_at: now,
      };
      const lines = laid.rows.map((row, position) => lineOf(batch.id, row, position));
      const tins = laid.size.units.map((line) => ({
        batch_id: batch.id,
        product_id: line.productId,
        units: line.wanted,
      }));
      await tell({
        kind: 'batch-started',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: storyOf(batch, lines, tins),
      });
      await insertBatch(tx, batch, lines, tins);
      return batch.id;
    },
    (id) => viewBatch(context, id),
  );

/** What is short first: that is what one can mend at once. */
function findHindrances(wish: BatchWish, laid: LaidBatch): Problem[] {
  const short = laid.short.map((item) =>
    problem('item-short', item.name, {
      found: item.have,
      allowed: item.need,
      parameters: { short: item.short, unit: item.unit },
    }),
  );
  const said = laid.hindrances.map((hindrance) =>
    problem('batch-hindered', 'wish', {
      parameters: { purpose: wish.purpose, reason: say(hindrance, laid) },
    }),
  );
  return [...short, ...said];
}

async function planRow(
  tx: Writer,
  wish: BatchWish,
  { recipe, size, markets }: LaidBatch,
): Promise<Omit<BatchRow, 'id' | 'entry_id' | 'started_at'>> {
  const retained = wish.size.by === 'tins' ? wish.size.retained : null;
  return {
    number: nextNumber(recipe.formula.code, await lastBatchNumber(tx, recipe.formula.code)),
    formula_id: recipe.formula.id,
    revision_id: recipe.revisionId,
    purpose: wish.purpose,
    markets: JSON.stringify(markets),
    planned_ug: orGiveUp(microgramsFromGrams(size.batchGrams, 'size')),
    retained_ug: retained?.keep ? orGiveUp(microgramsFromGrams(retained.grams, 'size.retained')) : null,
    declined_because: retained?.keep === false ? retained.reason : null,
  };
}

/** CO-0031 follows CO-0030; at least four digits. */
export function nextNumber(code: string, last: string | undefined): string {
  const running = last === undefined ? 0 : Number(last.slice(code.length + 1));
  return `${code}-${String(running + 1).padStart(4, '0')}`;
}

function lineOf(batchId: string, row: LaidRow, position: number): BatchLineRow {
  if (!row.lot) throw new Error(`a batch was to start without a lot of ${row.itemName}`);
  const note: WeighingNote = {
    percent: row.percent,
    tolerancePercent: row.tolerancePercent,
    relativeError: row.relativeError,
    smallestWeightGrams: row.smallestWeightGrams,
    timesAllowed: row.timesAllowed,
    warning: row.warning,
    lotNote: row.lotNote,
  };
  return {
    batch_id: batchId,
    position,
    stage: row.stage,
    item_kind: row.itemKind,
    item_id: row.itemId,
    lot_id: row.lot.id,
    exact_grams: row.exactGrams,
    target_ug: row.targetUg,
    low_ug: row.lowUg,
    high_ug: row.highUg,
    scale_id: row.scale?.id ?? null,
    weighing: JSON.stringify(note),
  };
}

const storyOf = (
  batch: BatchRow,
  lines: readonly BatchLineRow[],
  tins: readonly { readonly product_id: string; readonly units: number }[],
) => ({
  number: batch.number,
  formulaId: batch.formula_id,
  revisionId: batch.revision_id,
  purpose: batch.purpose,
  markets: JSON.parse(batch.markets) as string[],
  plannedGrams: gramsText(batch.planned_ug),
  retainedGrams: batch.retained_ug === null ? null : gramsText(batch.retained_ug),
  declinedBecause: batch.declined_because,
  tins: tins.map((tin) => ({ productId: tin.product_id, units: tin.units })),
  lines: lines.map((line) => ({
    position: line.position,
    stage: line.stage,
    itemKind: line.item_kind,
    itemId: line.item_id,
    lotId: line.lot_id,
    exactGrams: line.exact_grams,
    targetGrams: gramsText(line.target_ug),
    lowGrams: gramsText(line.low_ug),
    highGrams: gramsText(line.high_ug),
    scaleId: line.scale_id,
  })),
});
