import { problem } from '../../core/problem.ts';
import { giveUp, insertReservations, type OrderRow } from '../../storage/index.ts';
import { inside } from '../inside.ts';
import { record } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewOne } from './get-order.ts';
import { openOrder } from './open-order.ts';
import { chooseTins, type OrderTins, readOrderTins } from './order-tins.ts';

/**
 * Keeps released tins for an order's lines, first-expired-first-out; as many as there are. Tins that were kept and may
 * not go any more, since their lot or one behind it was stopped or ended, are let go first, so that others can take
 * their place. Free tins with a stopped lot behind them are passed over; where only such are left, the lot is named.
 */
export const reserveOrder: UseCase<'reserveOrder'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const order = await openOrder(tx, params.id ?? '');
      const tins = await readOrderTins(inside(context, tx), order);
      const kept = chooseTins(tins);
      const letGo = tins.keptInVain.map(({ why: _, ...keeping }) => keeping);
      if (kept.length + letGo.length === 0) giveUp(...whyNothingToKeep(order, tins));
      await tell({
        kind: 'order-reserved',
        subjectKind: 'order',
        subjectId: order.id,
        payload: { kept, letGo },
      });
      const booked = [...kept, ...letGo.map((row) => ({ ...row, units: -row.units }))];
      await insertReservations(
        tx,
        booked.map((row) => ({ ...row, entry_id: body.stamp.id })),
      );
      return order.id;
    },
    (id) => viewOne(context, id),
  );

const whyNothingToKeep = ({ number }: OrderRow, { heldBack }: OrderTins) =>
  heldBack.length > 0 ? heldBack : [problem('nothing-to-keep', 'order', { found: String(number) })];
