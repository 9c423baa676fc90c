import { type LotAtDepth, type MadeFrom, walkLots, wentInto } from './walk-lots.ts';

export interface TraceQuestion {
  readonly madeFrom: MadeFrom;
  /** Units of each lot that each order had. */
  readonly orders: ReadonlyMap<string, ReadonlyMap<string, number>>;
  readonly onHand: ReadonlyMap<string, number>;
  readonly suspect: string;
}

export interface Trace {
  /** Lots made from the suspect, nearest first; itself left out. */
  readonly affected: readonly LotAtDepth[];
  /** Orders that had units of the suspect or of an affected lot. */
  readonly orders: readonly string[];
  readonly shippedUnits: number;
  /** Of the suspect and of the affected lots, still here. */
  readonly unitsToBlock: number;
}

/**
 * Forward trace: everything that a suspect lot went into, over any number of steps, and where it is now.
 * Each lot is visited once, so that the work grows with the number of makings, and loops end.
 */
export function traceLots({ madeFrom, orders, onHand, suspect }: TraceQuestion): Trace {
  const into = wentInto(madeFrom);
  const affected = walkLots(suspect, (lot) => into.get(lot) ?? []);
  const tainted = [suspect, ...affected.map(({ lot }) => lot)];
  const isTainted = new Set(tainted);
  const had: string[] = [];
  let shippedUnits = 0;
  for (const [order, lots] of orders) {
    let units = 0;
    for (const [lot, count] of lots) if (isTainted.has(lot)) units += count;
    if (units > 0) had.push(order);
    shippedUnits += units;
  }
  const unitsToBlock = tainted.reduce((sum, lot) => sum + (onHand.get(lot) ?? 0), 0);
  return { affected, orders: had, shippedUnits, unitsToBlock };
}

/** Backward trace: every lot that a lot was made of, nearest first. */
export const traceBack = (madeFrom: MadeFrom, lot: string): LotAtDepth[] =>
  walkLots(lot, (made) => madeFrom.get(made) ?? []);
