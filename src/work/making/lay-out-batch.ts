import type { z } from 'zod';
import type { AskedProduct } from '../../check/index.ts';
import type { Market, orders, Saying, workshop } from '../../contract/index.ts';
import { itemKey } from '../../core/formula/index.ts';
import { planBatch } from '../../core/making/index.ts';
import { done, problem, type Result, refused } from '../../core/problem.ts';
import { type Exact, exact, gramsFromMicrograms, HUNDRED, toText } from '../../core/quantity/index.ts';
import {
  type LotAtHand,
  listLotsAtHand,
  listScales,
  type Reader,
  readWorkshop,
  type ScaleRow,
} from '../../storage/index.ts';
import { findAskedBehind } from '../asked-behind.ts';
import type { Context } from '../context.ts';
import { checkForSale, judgeForSale, type SaleCheck } from '../formulas/index.ts';
import { readLearntLoss } from '../learnt-loss.ts';
import { localDate } from '../local-date.ts';
import { isUsable } from '../lot-use.ts';
import { gramsText } from '../quantity-text.ts';
import { saying } from '../saying.ts';
import { isHeld } from '../scale-error.ts';
import { findStoppedBehind } from '../stopped-behind.ts';
import { checkAsMade } from './check-as-made.ts';
import { findLimits } from './find-limits.ts';
import { findPlannedWays, type PlannedWays } from './find-planned-ways.ts';
import { type LeftOut, leaveOutRests } from './leave-out-rests.ts';
import { listShort } from './list-short.ts';
import { openMade } from './made-lookup.ts';
import { findOlderBases } from './older-bases.ts';
import { type Recipe, readRecipe } from './read-recipe.ts';
import { readTins, type WantedTin } from './read-tins.ts';
import { type BatchWish, sizeWish, type WishSize } from './size-wish.ts';
import { type LaidWeighing, layWeighings } from './weigh-plan.ts';

type ShortItem = z.output<typeof orders.shortItem>;
type Workshop = z.output<typeof workshop.workshopDetails>;

/** One row of the weighing sheet before it is shown or written down. */
export interface LaidRow extends LaidWeighing {
  readonly stage: string;
  readonly itemKind: 'material' | 'formula';
  readonly itemId: string;
  readonly itemName: string;
  readonly percent: string;
  readonly exactGrams: string;
  readonly lot: LotAtHand | null;
  readonly lotNote: Saying | null;
  readonly caution: string;
  /** How many times what the formula asks its tightest limit allows; null: nothing binds it. */
  readonly timesAllowed: string | null;
}

export interface LaidBatch {
  readonly recipe: Recipe;
  readonly tins: readonly WantedTin[];
  /** As asked for, and where its tins are sold: the release judges by those. */
  readonly markets: readonly Market[];
  readonly size: WishSize;
  readonly rows: readonly LaidRow[];
  readonly short: readonly ShortItem[];
  readonly sale: SaleCheck;
  readonly hindrances: readonly Saying[];
  /** What its weighings need, and what may be done where they are too small. */
  readonly weighing: PlannedWays;
  /** In which what is said of it names moments. */
  readonly timeZone: string;
}

/** Sizes a batch within what is there on this day and lays out its weighing sheet; reads only. */
export async function layOutBatch(context: Context, wish: BatchWish, at: string): Promise<Result<LaidBatch>> {
  const { db } = context.storage;
  const workshopRow = await readWorkshop(db);
  if (!workshopRow) return refused(problem('workshop-not-begun', 'workshop'));
  const house = JSON.parse(workshopRow.details) as Workshop;
  const day = localDate(at, house.timeZone);
  const recipe = await readRecipe(db, wish.revisionId);
  if (!recipe.ok) return recipe;
  const everyScale = await listScales(db);
  const scales = everyScale.filter((scale) => !isHeld(scale));
  const tins = await tinsOf(db, recipe.value, wish, scales);
  if (!tins.ok) return tins;
  const lots = await usableLots(db, recipe.value, tins.value, { day, purpose: wish.purpose });
  const limits = findLimits(recipe.value, lots, tins.value, house.bowlGrams);
  const { learnt } = await readLearntLoss(db, recipe.value.formula.id);
  const size = sizeWish(wish.size, tins.value, limits, learnt);
  if (!size.ok) return size;
  const markets = marketsOf(wish, tins.value);
  const products = tins.value.map(({ productId: id, name }) => ({ id, name }));
  const asWritten = await checkForSale(context, wish.revisionId, markets, products);
  if (!asWritten.ok) return asWritten;
  const plan = { lots, scales, day, size: size.value };
  const bare = layRows(recipe.value, { ...plan, sale: asWritten.value });
  if (!bare.ok) return bare;
  const ofLots = await checkPlannedLots(context, wish.revisionId, { markets, products }, bare.value);
  if (ofLots && !ofLots.ok) return ofLots;
  const sale = ofLots ?? asWritten;
  const rows = ofLots ? layRows(recipe.value, { ...plan, sale: sale.value }) : bare;
  if (!rows.ok) return rows;
  const short = listShort(recipe.value, tins.value, lots, size.value);
  return done({
    recipe: recipe.value,
    tins: tins.value,
    markets,
    size: size.value,
    rows: rows.value,
    short,
    sale: sale.value,
    hindrances: [
      ...hindrancesOf(wish, size.value, sale.value),
      ...(wish.purpose === 'sale' ? await findAsked(db, rows.value) : []),
    ],
    weighing: findPlannedWays(
      { recipe: recipe.value, rows: rows.value, size: size.value },
      everyScale,
      house.bowlGrams,
    ),
    timeZone: house.timeZone,
  });
}

/** Where a planned lot, or one behind a base, has a certificate, its figures decide; undefined: none has. */
async function checkPlannedLots(
  context: Context,
  revisionId: string,
  { markets, products }: { readonly markets: readonly Market[]; readonly products: readonly AskedProduct[] },
  rows: readonly LaidRow[],
): Promise<Result<SaleCheck> | undefined> {
  const amounts = rows.flatMap(({ lot, targetUg }) => (lot ? [{ lot_id: lot.id, actual_ug: targetUg }] : []));
  // What no lot can give has no figures of its own, and is not started.
  if (amounts.length < rows.length) return undefined;
  const planned = await openMade(context.storage.db, { id: 'plan', revisionId, amounts });
  if (planned.certified.size === 0) return undefined;
  const checked = await checkAsMade(context, revisionId, markets, planned, products);
  return checked.ok ? done(judgeForSale(checked.value)) : checked;
}

const marketsOf = (wish: BatchWish, tins: readonly WantedTin[]): Market[] => [
  ...new Set([...wish.markets, ...tins.flatMap(({ details }) => details.markets)]),
];

async function tinsOf(
  db: Reader,
  recipe: Recipe,
  wish: BatchWish,
  scales: readonly ScaleRow[],
): Promise<Result<WantedTin[]>> {
  if (wish.size.by === 'grams') return done([]);
  if (recipe.formula.kind === 'base')
    return refused(problem('base-not-filled', 'size.tins', { found: recipe.formula.name }));
  return readTins(db, recipe.formula.id, wish.size.tins, scales);
}

async function usableLots(
  db: Reader,
  recipe: Recipe,
  tins: readonly WantedTin[],
  use: { readonly day: string; readonly purpose: string },
): Promise<LotAtHand[]> {
  const packaging = tins.flatMap(({ tin, lid, label }) =>
    [tin, lid, label].flatMap((part) => (part ? [part.id] : [])),
  );
  const itemIds = [...new Set([...recipe.lines.map((line) => line.item_id), ...packaging])];
  const lots = (await listLotsAtHand(db, { itemIds })).filter(
    (lot) => lot.on_hand > 0 && isUsable(lot, use.day, use.purpose),
  );
  const older = use.purpose === 'sale' ? await findOlderBases(db, lots) : new Set();
  const stopped = await findStoppedBehind(db);
  return lots.filter((lot) => !older.has(lot.id) && !stopped.has(lot.id));
}

interface RowParts {
  readonly lots: readonly LotAtHand[];
  readonly scales: readonly ScaleRow[];
  readonly day: string;
  readonly sale: SaleCheck;
  readonly size: WishSize;
}

/** A line goes over as many rows as it takes lots; what no lot can give stands in a row without one. */
function layRows(recipe: Recipe, { lots, scales, day, sale, size }: RowParts): Result<LaidRow[]> {
  const worth = worthOpening(recipe, lots, size.batchGrams);
  const planned = planBatch({
    formula: recipe.percents,
    batchGrams: size.batchGrams,
    lotsOf: lotsByItem(recipe, worth),
    useDate: day,
  });
  if (!planned.ok) return planned;
  const bare = planned.value.lines.flatMap((line, index) => [
    ...line.takes.map((take) => ({
      index,
      grams: take.quantity,
      lot: lots.find((lot) => lot.id === take.lot) ?? null,
    })),
    ...(line.shortGrams.gt(0) ? [{ index, grams: line.shortGrams, lot: null }] : []),
  ]);
  const weighings = layWeighings(
    bare.map(({ index, grams, lot }) => ({ grams, lot, ...delicacyOf(recipe, index, sale) })),
    scales,
  );
  if (!weighings.ok) return weighings;
  return done(
    bare.flatMap((row, place) => {
      const weighing = weighings.value[place];
      const rests = worth.find(({ line }) => line === row.index)?.rests ?? [];
      return weighing ? [rowOf(recipe, sale, { ...row, rests }, weighing)] : [];
    }),
  );
}

interface Worth extends LeftOut {
  /** Place of the line in the recipe. */
  readonly line: number;
}

/** Of each line the lots that are worth weighing from. */
const worthOpening = (recipe: Recipe, lots: readonly LotAtHand[], batchGrams: Exact): Worth[] =>
  recipe.lines.map(({ item_id }, line) => {
    const needed = exact(recipe.percents.lines[line]?.percent ?? 0)
      .times(batchGrams)
      .div(HUNDRED);
    return {
      line,
      ...leaveOutRests(
        lots.filter((lot) => lot.item_id === item_id),
        needed,
      ),
    };
  });

function lotsByItem(recipe: Recipe, worth: readonly Worth[]) {
  return new Map(
    recipe.lines.map((line, index) => [
      itemKey(recipe.percents.lines[index]?.item ?? { kind: 'material', id: line.item_id }),
      (worth[index]?.kept ?? []).map((lot) => ({
        lot: lot.id,
        quantity: gramsFromMicrograms(lot.on_hand),
        bestBefore: lot.best_before ?? lot.keep_until,
        received: lot.since,
        status: 'released' as const,
      })),
    ]),
  );
}

/** Scents and colours, and small additions that a limit holds for. */
function delicacyOf(recipe: Recipe, index: number, sale: SaleCheck) {
  const line = recipe.lines[index];
  const role = line && recipe.materials.get(line.item_id)?.role;
  const headroom = line ? (sale.headroom.get(line.item_id) ?? null) : null;
  const footroom = line ? (sale.footroom.get(line.item_id) ?? null) : null;
  const isSmall = recipe.percents.lines[index]?.percent.lte(SMALL_PERCENT) ?? false;
  return { isDelicate: role != null || (headroom !== null && isSmall), headroom, footroom };
}

/** Up to this share of the formula an addition counts as small (common practice, no source). */
const SMALL_PERCENT = 5;

function rowOf(
  recipe: Recipe,
  sale: SaleCheck,
  {
    index,
    grams,
    lot,
    rests,
  }: { index: number; grams: Exact; lot: LotAtHand | null; rests: readonly LotAtHand[] },
  weighing: LaidWeighing,
): LaidRow {
  const line = recipe.lines[index];
  if (!line) throw new Error('a row without its line');
  return {
    ...weighing,
    stage: line.stage,
    itemKind: line.item_kind as LaidRow['itemKind'],
    itemId: line.item_id,
    itemName: line.item_name,
    percent: recipe.percents.lines[index]?.shownPercent ?? '',
    exactGrams: toText(grams),
    lot,
    lotNote: lot && (noteOn(lot, grams) ?? noteOfRests(rests)),
    caution: recipe.materials.get(line.item_id)?.caution ?? '',
    timesAllowed: sale.headroom.get(line.item_id)?.toFixed() ?? null,
  };
}

/** What one should know of a lot before it is opened. */
function noteOn(lot: LotAtHand, grams: Exact): Saying | null {
  if (exact(gramsFromMicrograms(lot.on_hand)).eq(grams)) return saying('lot-is-used-up');
  const isBought = lot.item_kind === 'material';
  if (isBought && lot.supplier_lot === null) return saying('lot-number-not-known');
  if (isBought && lot.best_before === null) return saying('lot-date-not-known');
  return null;
}

/** So little is left of them by the book that somebody should look. */
function noteOfRests([first]: readonly LotAtHand[]): Saying | null {
  if (!first) return null;
  return saying('lot-rest-left-out', { lot: first.number, grams: gramsText(first.on_hand) });
}

/** Whether what a tablet did is in it, nobody knows yet: of such a lot nothing is begun for sale. */
async function findAsked(db: Reader, rows: readonly LaidRow[]): Promise<Saying[]> {
  const asked = await findAskedBehind(db);
  const lots = new Map(rows.flatMap(({ lot }) => (lot ? [[lot.id, lot]] : [])));
  return [...lots.values()].flatMap((lot) => {
    const batch = asked.get(lot.id);
    return batch === undefined
      ? []
      : [saying('hindrance-asked', { item: lot.item_name, lot: lot.number, batch })];
  });
}

function hindrancesOf(wish: BatchWish, size: WishSize, sale: SaleCheck): Saying[] {
  return [...(wish.purpose === 'sale' ? sale.hindrances : []), ...(size.isWhole ? [] : [sayTooLarge(size)])];
}

function sayTooLarge(size: WishSize): Saying {
  const wanted = size.units.reduce((sum, line) => sum + line.wanted, 0);
  const possible = size.units.reduce((sum, line) => sum + line.possible, 0);
  return size.units.length > 0
    ? saying('hindrance-too-many-tins', { wanted, possible })
    : saying('hindrance-too-large', { grams: toText(size.wantedGrams) });
}
