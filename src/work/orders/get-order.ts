import { done, type Result, refused } from '../../core/problem.ts';
import { findOrder } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { thingNotFound } from '../record.ts';
import { type OrderView, viewOrders } from './order-view.ts';

export async function viewOne({ storage }: Context, id: string): Promise<Result<OrderView>> {
  const order = await findOrder(storage.db, id);
  const [view] = order ? await viewOrders(storage.db, [order]) : [];
  return view ? done(view) : refused(thingNotFound('id', id));
}
