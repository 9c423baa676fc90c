import type { formulas, orders, stock } from '../../contract/index.ts';
import { type FormulaPercents, percentFromGrams } from '../../core/formula/index.ts';
import type { Exact } from '../../core/quantity/index.ts';
import {
  type BatchUnderWay,
  type GoodsOrderedRow,
  type LotAtHand,
  listBatchesUnderWay,
  listFormulas,
  listGoodsOnTheirWay,
  listMaterials,
  listOpenOrders,
  listProducts,
  listReservedByLot,
  listRevisionLines,
  listScales,
  listStandingLots,
  listStillToWeigh,
  type NamedRevisionLine,
  type ProductRow,
  type Reader,
  type ScaleRow,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { findHeldRuns, type HeldRuns } from '../filling/find-held-runs.ts';
import { findOldLabels, isTooOld } from '../filling/find-old-labels.ts';
import { listRevisionsInForce } from '../formulas/index.ts';
import { localDate, workshopZone } from '../local-date.ts';
import { findOlderBases } from '../making/older-bases.ts';
import { findTinAim } from '../making/read-tins.ts';
import { readProductDetails } from '../read-product-details.ts';
import { findStoppedBehind, type StoppedBehind } from '../stopped-behind.ts';
import { type OrderView, viewOrders } from './order-view.ts';

export interface BookProduct {
  readonly id: string;
  readonly name: string;
  readonly formulaId: string;
  readonly details: orders.ProductDetails;
  readonly aimGrams: Exact;
}

/** The revision of a formula that is in force; without percents where nothing was written down that can be made. */
export interface BookFormula {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly revision: { readonly id: string; readonly number: number } | null;
  readonly details: Pick<formulas.RevisionDetails, 'settingHours'> | null;
  readonly lines: readonly NamedRevisionLine[];
  readonly percents: FormulaPercents | null;
}

export interface BookMaterial {
  readonly id: string;
  readonly name: string;
  readonly details: stock.MaterialDetails;
}

/** Everything that decides what can go out when, read once however many orders are open. */
export interface OrderBook {
  readonly now: string;
  readonly today: string;
  readonly timeZone: string;
  /** Of which something is still to be sent, the next promised first. */
  readonly orders: readonly OrderView[];
  readonly products: ReadonlyMap<string, BookProduct>;
  readonly formulas: ReadonlyMap<string, BookFormula>;
  readonly materials: ReadonlyMap<string, BookMaterial>;
  /** Of which something stands, the first to end first. */
  readonly lots: readonly LotAtHand[];
  /** Of what was made: a lot behind it is not released, so it goes into nothing and nowhere. */
  readonly stoppedBehind: StoppedBehind;
  /** Tins whose labels a newer law asks for more than they say, and that nobody agreed to take in time. */
  readonly oldLabels: ReadonlySet<string>;
  /** Filled, not decided yet, and held at its release by what is not passed. */
  readonly heldRuns: HeldRuns;
  /** Lots of bases that were made differently from the base in force: they go into nothing for sale. */
  readonly olderBases: ReadonlySet<string>;
  /** Pieces of each lot that are kept for orders. */
  readonly kept: ReadonlyMap<string, number>;
  readonly batches: readonly BatchUnderWay[];
  /** What those batches have still to take of each lot. */
  readonly stillToWeigh: ReadonlyMap<string, number>;
  /** What somebody ordered of a material, until goods of it come in. */
  readonly onTheirWay: ReadonlyMap<string, GoodsOrderedRow>;
}

export async function readOrderBook(context: Context): Promise<OrderBook> {
  const { db } = context.storage;
  const now = context.machine.now();
  const timeZone = await workshopZone(context);
  const materials = await readMaterials(db);
  const lots = await listStandingLots(db);
  return {
    now,
    timeZone,
    today: localDate(now, timeZone),
    orders: await viewOrders(db, await listOpenOrders(db)),
    materials,
    products: readProducts(await listProducts(db), materials, await listScales(db)),
    formulas: await readFormulas(db),
    lots,
    stoppedBehind: await findStoppedBehind(db),
    oldLabels: await findTooOld(context, lots),
    heldRuns: await findHeldRuns(context),
    olderBases: await findOlderBases(db, lots),
    kept: new Map((await listReservedByLot(db)).map((row) => [row.lot_id, Number(row.units)])),
    batches: await listBatchesUnderWay(db),
    stillToWeigh: await listStillToWeigh(db),
    onTheirWay: await listGoodsOnTheirWay(db),
  };
}

async function findTooOld(context: Context, lots: readonly LotAtHand[]): Promise<Set<string>> {
  const found = await findOldLabels(context, lots);
  return new Set([...found].filter(([, old]) => old.some(isTooOld)).map(([id]) => id));
}

async function readMaterials(db: Reader): Promise<Map<string, BookMaterial>> {
  const rows = await listMaterials(db);
  return new Map(
    rows.map((row) => [
      row.id,
      { id: row.id, name: row.name, details: JSON.parse(row.details) as stock.MaterialDetails },
    ]),
  );
}

function readProducts(
  rows: readonly ProductRow[],
  materials: ReadonlyMap<string, BookMaterial>,
  scales: readonly ScaleRow[],
): Map<string, BookProduct> {
  return new Map(
    rows.map((row) => {
      const details = readProductDetails(row.details);
      const tare = materials.get(details.tinId)?.details.tareGrams ?? '0';
      const aimGrams = findTinAim(details, tare, scales);
      return [row.id, { id: row.id, name: row.name, formulaId: row.formula_id, details, aimGrams }];
    }),
  );
}

async function readFormulas(db: Reader): Promise<Map<string, BookFormula>> {
  const revisions = await listRevisionsInForce(db);
  const lines = await listRevisionLines(
    db,
    revisions.map((revision) => revision.id),
  );
  const formulaRows = await listFormulas(db);
  return new Map(
    formulaRows.map(({ id, name, kind }) => {
      const revision = revisions.find((row) => row.formula_id === id);
      const own = lines.filter((line) => line.revision_id === revision?.id);
      const percents = percentFromGrams(own.map(readLine));
      const details = revision ? (JSON.parse(revision.details) as BookFormula['details']) : null;
      return [
        id,
        {
          id,
          name,
          kind,
          revision: revision ? { id: revision.id, number: revision.number } : null,
          details,
          lines: own,
          percents: percents.ok ? percents.value : null,
        },
      ];
    }),
  );
}

const readLine = (line: NamedRevisionLine) => ({
  key: String(line.position),
  stage: line.stage,
  item:
    line.item_kind === 'formula'
      ? ({ kind: 'base', formulaId: line.item_id } as const)
      : ({ kind: 'material', id: line.item_id } as const),
  grams: line.grams,
});
