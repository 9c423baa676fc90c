import type { z } from 'zod';
import type { Saying, stock } from '../../contract/index.ts';
import { done } from '../../core/problem.ts';
import { exact, MICROGRAMS_PER_GRAM } from '../../core/quantity/index.ts';
import {
  type LotAtHand,
  listFormulas,
  listFullMarks,
  listMaterials,
  listProducts,
  listReservedByLot,
  listStandingLots,
  type Reader,
} from '../../storage/index.ts';
import { workshopToday } from '../local-date.ts';
import { isUsable } from '../lot-use.ts';
import { needsOfOpenOrders, type OpenNeeds } from '../orders/needs.ts';
import { amountText } from '../quantity-text.ts';
import { readProductDetails } from '../read-product-details.ts';
import { saying } from '../saying.ts';
import { findStoppedBehind, type StoppedBehind } from '../stopped-behind.ts';
import type { UseCase } from '../use-case.ts';
import { viewLot } from './lot-view.ts';
import type { MaterialDetails } from './material-view.ts';
import { endOfLot, judgeShelf, type ShelfCount } from './shelf-state.ts';

type ShelfItem = z.output<typeof stock.shelfItem>;

/** A dozen queries however much was made: sums are taken by the database, and only lots that stand are read. */
export const getShelf: UseCase<'getShelf'> = async (context) => {
  const { db } = context.storage;
  const today = await workshopToday(context);
  const needs = await needsOfOpenOrders(context);
  const kept = new Map((await listReservedByLot(db)).map((row) => [row.lot_id, Number(row.units)]));
  const stoppedBehind = await findStoppedBehind(db);
  const lots = groupByItem(await listStandingLots(db));
  const marks = new Map((await listFullMarks(db)).map((row) => [row.item_id, row.most]));
  const items = (await listThings(db, lots)).map((thing) =>
    viewItem(thing, {
      lots: lots.get(thing.itemId) ?? [],
      most: marks.get(thing.itemId) ?? 0,
      kept,
      needs,
      stoppedBehind,
      today,
    }),
  );
  return done({ sentence: answerOf(items), items });
};

function groupByItem(lots: readonly LotAtHand[]): Map<string, LotAtHand[]> {
  const groups = new Map<string, LotAtHand[]>();
  for (const lot of lots) {
    const group = groups.get(lot.item_id);
    if (group) group.push(lot);
    else groups.set(lot.item_id, [lot]);
  }
  return groups;
}

type Thing = Pick<ShelfItem, 'itemKind' | 'itemId' | 'name' | 'group' | 'packagingKind' | 'unit'> & {
  readonly reorderBelow: string | null;
};

/** Everything bought, every base, every product that is sold; and whatever else stands. */
async function listThings(db: Reader, lots: ReadonlyMap<string, unknown>): Promise<Thing[]> {
  const materials = (await listMaterials(db)).map(({ id, name, kind, details }): Thing => {
    const { packagingKind, reorderBelow } = JSON.parse(details) as MaterialDetails;
    const isPackaging = kind === 'packaging';
    return {
      itemKind: 'material',
      itemId: id,
      name,
      group: isPackaging ? 'packaging' : 'ingredient',
      packagingKind,
      unit: isPackaging ? 'pieces' : 'g',
      reorderBelow,
    };
  });
  const made = { packagingKind: null, reorderBelow: null };
  const formulas = (await listFormulas(db))
    .filter((row) => row.kind === 'base' || lots.has(row.id))
    .map(
      ({ id, name }): Thing => ({ ...made, itemKind: 'formula', itemId: id, name, group: 'base', unit: 'g' }),
    );
  const products = (await listProducts(db))
    .filter((row) => lots.has(row.id) || !readProductDetails(row.details).isWithdrawn)
    .map(
      ({ id, name }): Thing => ({
        ...made,
        itemKind: 'product',
        itemId: id,
        name,
        group: 'product',
        unit: 'pieces',
      }),
    );
  return [...materials, ...formulas, ...products];
}

interface Standing {
  readonly lots: readonly LotAtHand[];
  readonly most: number;
  readonly kept: ReadonlyMap<string, number>;
  readonly needs: OpenNeeds;
  readonly stoppedBehind: StoppedBehind;
  readonly today: string;
}

function viewItem(thing: Thing, standing: Standing): ShelfItem {
  const { lots, kept, today } = standing;
  const count = countOf(thing, standing);
  const text = (quantity: number) => amountText(quantity, thing.unit);
  const ends = lots.map(endOfLot).filter((end) => end !== null);
  return {
    ...thing,
    usable: text(count.usable),
    onHand: text(count.onHand),
    reserved: text(sumOf(lots, (lot) => kept.get(lot.id) ?? 0)),
    needed: text(count.needed),
    fullMark: text(Math.max(standing.most, count.onHand)),
    firstEnds: ends.sort()[0] ?? null,
    lotsWithUnknowns: lots.filter(hasUnknowns).length,
    ...judgeShelf(count),
    lots: lots.map((lot) => viewLot(lot, today, kept.get(lot.id) ?? 0)),
  };
}

function countOf(thing: Thing, { lots, needs, stoppedBehind, today }: Standing): ShelfCount {
  const isProduct = thing.itemKind === 'product';
  return {
    group: thing.group,
    unit: thing.unit,
    lots,
    onHand: sumOf(lots, (lot) => lot.on_hand),
    usable: sumOf(
      lots.filter((lot) => isUsable(lot, today, 'sale') && !stoppedBehind.has(lot.id)),
      (lot) => lot.on_hand,
    ),
    needed: (isProduct ? needs.missing : needs.amounts).get(thing.itemId) ?? 0,
    short: isProduct ? 0 : (needs.short.get(thing.itemId) ?? 0),
    reorderBelow: thing.reorderBelow === null ? null : inLedger(thing.reorderBelow, thing.unit),
    today,
  };
}

const sumOf = (lots: readonly LotAtHand[], pick: (lot: LotAtHand) => number): number =>
  lots.reduce((sum, lot) => sum + pick(lot), 0);

const inLedger = (amount: string, unit: ShelfItem['unit']): number =>
  (unit === 'g' ? exact(amount).times(MICROGRAMS_PER_GRAM) : exact(amount)).toNumber();

/** Bought, and its number or its date is not known. */
const hasUnknowns = (lot: LotAtHand): boolean =>
  lot.item_kind === 'material' && (lot.supplier_lot === null || lot.best_before === null);

function answerOf(items: readonly ShelfItem[]): Saying {
  if (items.length === 0) return saying('shelf-answer-empty');
  const stopped = items.filter((item) => item.state === 'stop');
  const watched = items.filter((item) => item.state === 'watch').length;
  const [first] = stopped;
  if (first) return saying('shelf-answer-short', { n: stopped.length, item: first.name });
  return watched > 0 ? saying('shelf-answer-watch', { n: watched }) : saying('shelf-answer-enough');
}
