import { mayGo } from './may-go.ts';
import type { OrderBook } from './read-order-book.ts';

/** Released and within its date, less what batches under way have still to take: whole micrograms or pieces. */
export const usableStock = (book: OrderBook, itemId: string): number =>
  book.lots
    .filter((lot) => lot.item_id === itemId && mayGo(book, lot))
    .reduce((sum, lot) => sum + Math.max(0, lot.on_hand - (book.stillToWeigh.get(lot.id) ?? 0)), 0);
