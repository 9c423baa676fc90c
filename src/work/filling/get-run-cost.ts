import type { z } from 'zod';
import type { filling } from '../../contract/index.ts';
import { type CostRow, costOfRun, type RunCost, sharePennies } from '../../core/cost/index.ts';
import { done, problem, refused } from '../../core/problem.ts';
import { type Exact, toText } from '../../core/quantity/index.ts';
import { type LotAtHand, sumRunMovements } from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { workshopDetails } from '../workshop-details.ts';
import { costedLot, readCostLedger } from './costed-lots.ts';
import { gatherRun } from './run-records.ts';

type CostView = z.output<typeof filling.costView>;

/** What the tins really cost, lot by lot: of the bowl what they hold, the sample and what was lost with them. */
export const getRunCost: UseCase<'getRunCost'> = async (context, { params: { id = '' } }) => {
  const { db } = context.storage;
  const records = await gatherRun(db, id);
  if (!records) return refused(thingNotFound('id', id));
  const { head, close, bowl } = records;
  if (!close || !bowl) return refused(problem('run-still-filling', `filling run ${head.number}`));
  const moved = await sumRunMovements(db, head.id);
  const ledger = await readCostLedger(
    db,
    bowl.id,
    moved.map((row) => row.lot_id),
  );
  const { lots } = ledger;
  const outOf = (lotId: string, kinds: readonly string[]) =>
    -moved
      .filter((row) => row.lot_id === lotId && kinds.includes(row.kind))
      .reduce((sum, row) => sum + row.quantity, 0);
  const packaging = [...new Set(moved.map((row) => row.lot_id))].flatMap((lotId) => {
    const lot = lots.get(lotId);
    const isPackaging = lot !== undefined && lot.item_kind === 'material';
    return isPackaging ? [costedLot(lot, outOf(lotId, ['used', 'broken']), ledger)] : [];
  });
  const bowlUsed = outOf(bowl.id, ['used', 'binned', 'tester']) + (close.retained_ug ?? 0);
  const bulk = costedLot(bowl, bowlUsed, ledger);
  const cost = costOfRun({ bulk, packaging, units: close.units });
  if (!cost.ok) return cost;
  const { currency } = await workshopDetails(context);
  return done(viewCost(cost.value, currency, lots));
};

/** Money is shown to a hundredth of a penny; sums are taken before anything is rounded. */
const money = (value: Exact): string => toText(value.toDecimalPlaces(4));

function viewCost(cost: RunCost, currency: string, lots: ReadonlyMap<string, LotAtHand>): CostView {
  const shown = sharePennies(cost.rows.map((row) => row.cost));
  return {
    total: money(cost.total),
    shownTotal: shown.total.toFixed(2),
    perTin: cost.perTin === null ? null : money(cost.perTin),
    isComplete: cost.isComplete,
    currency,
    rows: cost.rows.map((row, index) => ({
      ...viewRow(row, lots),
      shownCost: shown.parts[index]?.toFixed(2) ?? null,
    })),
  };
}

const viewRow = (
  row: CostRow,
  lots: ReadonlyMap<string, LotAtHand>,
): Omit<CostView['rows'][number], 'shownCost'> => ({
  lotId: row.lot,
  lotNumber: lots.get(row.lot)?.number ?? '',
  itemName: row.itemName,
  amount: toText(row.quantity.toDecimalPlaces(6)),
  unit: row.unit,
  cost: row.cost === null ? null : money(row.cost),
});
