import { problem } from '../../core/problem.ts';
import { giveUp, insertReservations, updateOrder } from '../../storage/index.ts';
import { changedMeanwhile, record, viewId } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { openOrder } from './open-order.ts';
import { viewOrders } from './order-view.ts';

/** Cancels what is not sent; tins that were kept are free again. Where everything went there is nothing to cancel. */
export const cancelOrder: UseCase<'cancelOrder'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const order = await openOrder(tx, params.id ?? '');
      const [view] = await viewOrders(tx, [order]);
      if (view?.state === 'sent') giveUp(problem('order-sent-whole', 'id', { found: String(order.number) }));
      await tell({
        kind: 'order-cancelled',
        subjectKind: 'order',
        subjectId: order.id,
        // Why may be about the customer: it stands with the order, where it can be erased.
        payload: {},
      });
      const cancelled = { ...order, cancelled: 1, cancelled_because: body.reason };
      if (!(await updateOrder(tx, cancelled, body.version))) {
        giveUp(changedMeanwhile(`order ${order.number}`, body.version, order.version, order.wanted_by));
      }
      const freed = (view?.lines ?? []).flatMap((line) =>
        line.reserved.map((row) => ({
          entry_id: body.stamp.id,
          order_line_id: line.id,
          lot_id: row.lotId,
          units: -row.units,
        })),
      );
      await insertReservations(tx, freed);
      return order.id;
    },
    viewId,
  );
