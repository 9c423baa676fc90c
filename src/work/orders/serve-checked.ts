import type { Context } from '../context.ts';
import { barMakings } from './bar-makings.ts';
import type { OrderBook } from './read-order-book.ts';
import { type OrderToServe, type ServedOrder, serveOrders } from './serve-orders.ts';

/**
 * Orders in turn, with nothing counted as to be made that may not be made for sale: what such tins would have taken is
 * left to the other orders. Only what has to be made at all is checked, which is why the orders are served first.
 */
export async function serveChecked(
  context: Context,
  book: OrderBook,
  orders: readonly OrderToServe[],
): Promise<ServedOrder[]> {
  const served = serveOrders(book, orders);
  const bars = await barMakings(context, book, served);
  return bars.size === 0 ? served : serveOrders(book, orders, bars);
}
