import {
  type BatchLine,
  type FormulaItem,
  type FormulaPercents,
  gramsForBatch,
  itemKey,
} from '../formula/index.ts';
import { done, type Result } from '../problem.ts';
import { type Exact, type ExactInput, exact, gramsFromMicrograms, ZERO } from '../quantity/index.ts';
import { chooseFirstExpiry, type FirstExpiry, type Issue, type LotToUse } from '../stock/index.ts';

export interface BatchToPlan {
  readonly formula: FormulaPercents;
  readonly batchGrams: ExactInput;
  /** Lots of each item, under its itemKey; quantities in grams. */
  readonly lotsOf: ReadonlyMap<string, readonly LotToUse[]>;
  /** YYYY-MM-DD: lots past their date on this day are left out. */
  readonly useDate: string;
}

export interface PlannedLine extends BatchLine {
  /** Whole micrograms of each lot, in grams; two lots where the first does not suffice. */
  readonly takes: readonly Issue[];
  readonly shortGrams: Exact;
}

export interface ItemShort {
  readonly item: FormulaItem;
  /** Over all lines of the item. */
  readonly needGrams: Exact;
  /** Usable on the day. */
  readonly haveGrams: Exact;
  readonly shortGrams: Exact;
}

export interface BatchPlan {
  readonly lines: readonly PlannedLine[];
  readonly short: readonly ItemShort[];
}

/** What is left of the lots while the lines take their parts; an item may stand on several lines. */
class Shelf {
  readonly #left: Map<string, readonly LotToUse[]>;
  readonly #useDate: string;

  constructor({ lotsOf, useDate }: BatchToPlan) {
    this.#left = new Map(lotsOf);
    this.#useDate = useDate;
  }

  take(key: string, need: ExactInput): Result<FirstExpiry> {
    const lots = this.#left.get(key) ?? [];
    const chosen = chooseFirstExpiry(lots, need, this.#useDate);
    if (!chosen.ok) return chosen;
    const taken = new Map(chosen.value.issue.map(({ lot, quantity }) => [lot, quantity]));
    this.#left.set(
      key,
      lots.map((lot) => ({ ...lot, quantity: exact(lot.quantity).minus(taken.get(lot.lot) ?? 0) })),
    );
    return chosen;
  }
}

function gatherShort(lines: readonly PlannedLine[]): ItemShort[] {
  const byItem = new Map<string, ItemShort>();
  for (const { item, micrograms, shortGrams } of lines) {
    const key = itemKey(item);
    const known = byItem.get(key);
    const need = gramsFromMicrograms(micrograms);
    byItem.set(key, {
      item,
      needGrams: need.plus(known?.needGrams ?? 0),
      haveGrams: need.minus(shortGrams).plus(known?.haveGrams ?? 0),
      shortGrams: shortGrams.plus(known?.shortGrams ?? 0),
    });
  }
  return [...byItem.values()].filter(({ shortGrams }) => shortGrams.gt(ZERO));
}

/**
 * Scales a formula to a batch and takes each line from its lots, first-expired-first-out. What the lines take and what
 * is short add up to the batch; what a scale can show of it is decided in `weighing`.
 */
export function planBatch(batch: BatchToPlan): Result<BatchPlan> {
  const scaled = gramsForBatch(batch.formula, batch.batchGrams);
  if (!scaled.ok) return scaled;
  const shelf = new Shelf(batch);
  const lines: PlannedLine[] = [];
  for (const line of scaled.value) {
    const chosen = shelf.take(itemKey(line.item), gramsFromMicrograms(line.micrograms));
    if (!chosen.ok) return chosen;
    lines.push({ ...line, takes: chosen.value.issue, shortGrams: chosen.value.short });
  }
  return done({ lines, short: gatherShort(lines) });
}
