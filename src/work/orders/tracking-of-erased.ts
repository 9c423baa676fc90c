import { problem } from '../../core/problem.ts';
import { findCustomer, giveUp, type OrderRow, type Writer } from '../../storage/index.ts';

/** A carrier's number leads to the customer's door, and this one asked that nothing should. */
export async function refuseTrackingOfErased(tx: Writer, order: OrderRow, tracking: string): Promise<void> {
  if (tracking === '' || order.customer_id === null) return;
  const customer = await findCustomer(tx, order.customer_id);
  if (customer?.is_erased) giveUp(problem('tracking-of-erased', 'tracking', { found: String(order.number) }));
}
