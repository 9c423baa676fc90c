import { problem } from '../../core/problem.ts';
import { findOrder, giveUp, type OrderRow, type Writer } from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';

/** An order that was not cancelled. */
export async function openOrder(tx: Writer, id: string): Promise<OrderRow> {
  const order = await findOrder(tx, id);
  if (!order) giveUp(thingNotFound('id', id));
  if (order.cancelled === 1) giveUp(problem('order-cancelled', 'id', { found: String(order.number) }));
  return order;
}
