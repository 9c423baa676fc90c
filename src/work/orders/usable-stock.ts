import { isUsable } from '../lot-use.ts';
import type { OrderBook } from './read-order-book.ts';

/** Released and within its date, less what batches under way have still to take: whole micrograms or pieces. */
export const usableStock = ({ lots, today, stillToWeigh }: OrderBook, itemId: string): number =>
  lots
    .filter((lot) => lot.item_id === itemId && isUsable(lot, today))
    .reduce((sum, lot) => sum + Math.max(0, lot.on_hand - (stillToWeigh.get(lot.id) ?? 0)), 0);
