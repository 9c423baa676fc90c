import { netUgOf, type RunRecords, takenUgOf } from './run-records.ts';
import type { RunView } from './run-shapes.ts';
import { stateOf } from './run-state.ts';

/** In the bowl for more tins: what stands in tins is not booked before its run is closed. */
export function bowlLeftUg(records: RunRecords): number {
  const mine = records.close ? 0 : takenUgOf(records.weights);
  return Math.max(0, (records.bowl?.on_hand ?? 0) - records.elsewhereUg - mine);
}

/** The other kinds of tin from the same bowl, in the order in which they were begun; then those that are planned only. */
export function viewOthers(records: RunRecords): RunView['others'] {
  const left = bowlLeftUg(records);
  const { siblings, planned, head } = records;
  const begun = siblings.map(({ head: other, close, release, name, weights }) => ({
    id: other.id,
    number: other.number,
    productId: other.product_id,
    productName: name,
    state: stateOf({ close, release }),
    wanted: other.wanted,
    filled: close ? close.units : weights.filter((row) => netUgOf([row]) > 0).length,
    bowlHolds: close ? 0 : Math.floor(left / other.aim_ug),
  }));
  const taken = new Set([head.product_id, ...siblings.map((other) => other.head.product_id)]);
  const waiting = planned
    .filter((row) => !taken.has(row.product_id))
    .map((row) => ({
      id: null,
      number: null,
      productId: row.product_id,
      productName: row.product_name,
      state: 'planned' as const,
      wanted: row.units,
      filled: 0,
      bowlHolds: null,
    }));
  return [...begun, ...waiting];
}
