import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, ONE, sumOf, toText } from '../quantity/index.ts';

/** Where the cost of a lot comes from. */
export type CostSource =
  /** Bought or found: what was paid, freight included, for how much of it. */
  | { readonly kind: 'paid'; readonly paid: ExactInput; readonly forQuantity: ExactInput }
  | { readonly kind: 'unknown' }
  /** A base or a mixture: of what it was made, and how much came out. */
  | { readonly kind: 'made'; readonly from: readonly CostedLot[]; readonly yieldGrams: ExactInput };

export interface CostedLot {
  readonly lot: string;
  readonly itemName: string;
  readonly unit: 'g' | 'pieces';
  /** How much of it was used. */
  readonly quantity: ExactInput;
  readonly source: CostSource;
}

export interface RunToCost {
  /** The bulk that was filled, with what was spilt and kept as a sample. */
  readonly bulk: CostedLot;
  /** Tins, lids, labels, spoilt ones included. */
  readonly packaging: readonly CostedLot[];
  readonly units: number;
}

export interface CostRow {
  readonly lot: string;
  readonly itemName: string;
  readonly unit: 'g' | 'pieces';
  readonly quantity: Exact;
  /** null: nobody knows what was paid for this lot. */
  readonly cost: Exact | null;
}

export interface RunCost {
  readonly rows: readonly CostRow[];
  /** At least, where a price is unknown: such a lot is named and never counted as nothing. */
  readonly total: Exact;
  readonly perTin: Exact | null;
  readonly isComplete: boolean;
  readonly unknownLots: readonly string[];
}

interface Share {
  readonly of: Exact;
  readonly over: Exact;
}

/** Rows of bought lots; a base or mixture is opened into its own lots, by the share that was used of it. */
class CostSheet {
  readonly #rows = new Map<string, CostRow>();
  readonly problems: Problem[] = [];

  get rows(): CostRow[] {
    return [...this.#rows.values()];
  }

  add(lot: CostedLot, { of, over }: Share): void {
    const { source } = lot;
    const used = exact(lot.quantity).times(of);
    if (source.kind === 'made') {
      if (this.#isAboveNought(lot.itemName, source.yieldGrams)) {
        for (const part of source.from) this.add(part, { of: used, over: over.times(source.yieldGrams) });
      }
    } else if (source.kind === 'unknown') this.#put(lot, used.div(over), null);
    else if (this.#isAboveNought(lot.itemName, source.forQuantity)) {
      const cost = used.times(source.paid).div(over.times(source.forQuantity));
      this.#put(lot, used.div(over), cost);
    }
  }

  #put({ lot, itemName, unit }: CostedLot, quantity: Exact, cost: Exact | null): void {
    const known = this.#rows.get(lot);
    const before = known === undefined ? exact(0) : known.cost;
    this.#rows.set(lot, {
      lot,
      itemName,
      unit,
      quantity: quantity.plus(known?.quantity ?? 0),
      cost: before === null || cost === null ? null : before.plus(cost),
    });
  }

  #isAboveNought(where: string, value: ExactInput): boolean {
    const isAbove = exact(value).gt(0);
    if (!isAbove)
      this.problems.push(problem('value-not-above', where, { found: toText(exact(value)), allowed: 0 }));
    return isAbove;
  }
}

/**
 * What the tins of one filling run really cost, lot by lot: each lot's price x what was used of it. Of the bulk the run
 * bears used / yield, so that what the bowl kept is paid for by what came out. Prices as paid; no labour, no overhead.
 */
export function costOfRun({ bulk, packaging, units }: RunToCost): Result<RunCost> {
  const sheet = new CostSheet();
  for (const lot of [bulk, ...packaging]) sheet.add(lot, { of: ONE, over: ONE });
  if (sheet.problems.length > 0) return refused(...sheet.problems);
  const { rows } = sheet;
  const total = sumOf(rows.flatMap(({ cost }) => (cost === null ? [] : [cost])));
  const unknownLots = rows.filter(({ cost }) => cost === null).map(({ lot }) => lot);
  return done({
    rows,
    total,
    perTin: units > 0 ? total.div(units) : null,
    isComplete: unknownLots.length === 0,
    unknownLots,
  });
}
