import { type CostedLot, costOfRun } from '../../core/cost/index.ts';
import { type Exact, gramsFromMicrograms } from '../../core/quantity/index.ts';
import {
  type LotAtHand,
  listLotsAtHand,
  type MadeFrom,
  type Reader,
  stepAlong,
} from '../../storage/index.ts';

/** Lots and the makings behind them: what the cost of one is reckoned from. */
export interface CostLedger {
  readonly makings: readonly MadeFrom[];
  readonly lots: ReadonlyMap<string, LotAtHand>;
}

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

export async function readCostLedger(
  db: Reader,
  bowlId: string,
  others: readonly string[] = [],
): Promise<CostLedger> {
  const makings = await readMakings(db, bowlId);
  const lotIds = [...new Set([bowlId, ...others, ...makings.map((step) => step.usedLotId)])];
  const lots = await listLotsAtHand(db, { lotIds });
  return { makings, lots: new Map(lots.map((lot) => [lot.id, lot])) };
}

const inUnit = (quantity: number, unit: string): Exact | number =>
  unit === 'g' ? gramsFromMicrograms(quantity) : quantity;

export const costedLot = (lot: LotAtHand, quantity: number, ledger: CostLedger): CostedLot => ({
  lot: lot.id,
  itemName: lot.item_name,
  unit: lot.unit as CostedLot['unit'],
  quantity: inUnit(quantity, lot.unit),
  source: sourceOf(lot, ledger),
});

function sourceOf(lot: LotAtHand, ledger: CostLedger): CostedLot['source'] {
  if (lot.item_kind === 'formula') {
    const from = ledger.makings.flatMap((step) => {
      const used = step.madeLotId === lot.id ? ledger.lots.get(step.usedLotId) : undefined;
      return used ? [costedLot(used, step.quantity, ledger)] : [];
    });
    return { kind: 'made', from, yieldGrams: gramsFromMicrograms(lot.received) };
  }
  return lot.paid === null || lot.received <= 0
    ? { kind: 'unknown' }
    : { kind: 'paid', paid: lot.paid, forQuantity: inUnit(lot.received, lot.unit) };
}

/** Money for a gram of what is in the bowl; null: a price behind it is not known. */
export async function findBulkPricePerGram(db: Reader, bowlId: string): Promise<Exact | null> {
  const ledger = await readCostLedger(db, bowlId);
  const bowl = ledger.lots.get(bowlId);
  if (!bowl || bowl.received <= 0) return null;
  const cost = costOfRun({ bulk: costedLot(bowl, bowl.received, ledger), packaging: [], units: 0 });
  if (!cost.ok || !cost.value.isComplete) return null;
  return cost.value.total.div(gramsFromMicrograms(bowl.received));
}
