import type { z } from 'zod';
import type { filling } from '../../contract/index.ts';
import {
  type CostedLot,
  type CostRow,
  costOfRun,
  type RunCost,
  sharePennies,
} from '../../core/cost/index.ts';
import { done, problem, refused } from '../../core/problem.ts';
import { type Exact, gramsFromMicrograms, toText } from '../../core/quantity/index.ts';
import {
  type LotAtHand,
  listLotsAtHand,
  type MadeFrom,
  type Reader,
  stepAlong,
  sumRunMovements,
} from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { workshopDetails } from '../workshop-details.ts';
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
  const makings = await readMakings(db, bowl.id);
  const lots = await readLots(db, [bowl.id, ...moved.map((row) => row.lot_id)], makings);
  const outOf = (lotId: string, kinds: readonly string[]) =>
    -moved
      .filter((row) => row.lot_id === lotId && kinds.includes(row.kind))
      .reduce((sum, row) => sum + row.quantity, 0);
  const packaging = [...new Set(moved.map((row) => row.lot_id))].flatMap((lotId) => {
    const lot = lots.get(lotId);
    const isPackaging = lot !== undefined && lot.item_kind === 'material';
    return isPackaging ? [costedLot(lot, outOf(lotId, ['used', 'broken']), makings, lots)] : [];
  });
  const bowlUsed = outOf(bowl.id, ['used', 'binned']) + (close.retained_ug ?? 0);
  const bulk = costedLot(bowl, bowlUsed, makings, lots);
  const cost = costOfRun({ bulk, packaging, units: close.units });
  if (!cost.ok) return cost;
  const { currency } = await workshopDetails(context);
  return done(viewCost(cost.value, currency, lots));
};

/** Every making behind the bowl: base in mixture, base in base. A lot cannot be made of itself, so this ends. */
async function readMakings(db: Reader, bowlId: string): Promise<MadeFrom[]> {
  const makings: MadeFrom[] = [];
  const seen = new Set<string>();
  let frontier = [bowlId];
  while (frontier.length > 0) {
    for (const lot of frontier) seen.add(lot);
    const steps = await stepAlong(db, frontier, 'back');
    makings.push(...steps);
    frontier = [...new Set(steps.map((step) => step.usedLotId))].filter((lot) => !seen.has(lot));
  }
  return makings;
}

async function readLots(
  db: Reader,
  ids: readonly string[],
  makings: readonly MadeFrom[],
): Promise<Map<string, LotAtHand>> {
  const lotIds = [...new Set([...ids, ...makings.map((step) => step.usedLotId)])];
  const lots = await listLotsAtHand(db, { lotIds });
  return new Map(lots.map((lot) => [lot.id, lot]));
}

const inUnit = (quantity: number, unit: string): Exact | number =>
  unit === 'g' ? gramsFromMicrograms(quantity) : quantity;

function costedLot(
  lot: LotAtHand,
  quantity: number,
  makings: readonly MadeFrom[],
  lots: ReadonlyMap<string, LotAtHand>,
): CostedLot {
  return {
    lot: lot.id,
    itemName: lot.item_name,
    unit: lot.unit as CostedLot['unit'],
    quantity: inUnit(quantity, lot.unit),
    source: sourceOf(lot, makings, lots),
  };
}

function sourceOf(
  lot: LotAtHand,
  makings: readonly MadeFrom[],
  lots: ReadonlyMap<string, LotAtHand>,
): CostedLot['source'] {
  if (lot.item_kind === 'formula') {
    const from = makings.flatMap((step) => {
      const used = step.madeLotId === lot.id ? lots.get(step.usedLotId) : undefined;
      return used ? [costedLot(used, step.quantity, makings, lots)] : [];
    });
    return { kind: 'made', from, yieldGrams: gramsFromMicrograms(lot.received) };
  }
  return lot.paid === null || lot.received <= 0
    ? { kind: 'unknown' }
    : { kind: 'paid', paid: lot.paid, forQuantity: inUnit(lot.received, lot.unit) };
}

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
