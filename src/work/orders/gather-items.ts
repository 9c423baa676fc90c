import { exact, roundToStep } from '../../core/quantity/index.ts';
import type { PromiseItem, PromiseMaking } from '../../core/stock/index.ts';
import { daysUntilHere } from './days-until-here.ts';
import type { BookFormula, OrderBook } from './read-order-book.ts';
import type { ShelfLeft } from './shelf-left.ts';

/** Shares of a formula are cut here, far below a microgram: what just suffices still suffices. */
const SHARE_STEP = '1e-40';

/** Everything that these items lead to: bases, what those are made of, materials, packaging, with what is left of each. */
export function gatherItems(book: OrderBook, shelf: ShelfLeft, itemIds: readonly string[]): PromiseItem[] {
  const items = new Map<string, PromiseItem>();
  const visit = (itemId: string) => {
    if (items.has(itemId)) return;
    const item = itemOf(book, shelf, itemId);
    items.set(itemId, item);
    for (const part of item.making?.parts ?? []) visit(part.itemId);
  };
  itemIds.forEach(visit);
  return [...items.values()];
}

function itemOf(book: OrderBook, shelf: ShelfLeft, itemId: string): PromiseItem {
  const formula = book.formulas.get(itemId);
  if (formula) {
    // Bowls of a mixture were drawn as tins already.
    const lots = formula.kind === 'base' ? shelf.lotsOf(itemId) : [];
    return { itemId, name: formula.name, unit: 'g', lots, making: makingOf(formula), leadDays: null };
  }
  const material = book.materials.get(itemId);
  return {
    itemId,
    name: material?.name ?? '',
    unit: material?.details.kind === 'packaging' ? 'pieces' : 'g',
    lots: shelf.lotsOf(itemId),
    making: null,
    leadDays: material ? daysUntilHere(book, material) : null,
  };
}

/**
 * Hands-on time is not counted: melting, making and filling are taken as done on the day on which their parts are at
 * hand (common practice, no source).
 */
function makingOf({ lines, percents, details }: BookFormula): PromiseMaking | null {
  if (percents === null) return null;
  const parts = new Map<string, bigint>();
  for (const [index, { item_id }] of lines.entries())
    parts.set(item_id, (parts.get(item_id) ?? 0n) + (percents.micrograms[index] ?? 0n));
  return {
    parts: [...parts].map(([itemId, part]) => ({
      itemId,
      amount: roundToStep(exact(part.toString()).div(percents.total.toString()), SHARE_STEP, 'down'),
    })),
    minutes: 0,
    settingHours: details?.settingHours ?? null,
  };
}
