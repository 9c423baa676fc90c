import { problem } from '../../core/problem.ts';
import {
  type DispatchRow,
  findDispatch,
  findOrder,
  giveUp,
  insertMovements,
  listMovementsOfDispatches,
  setTracking,
  type Writer,
} from '../../storage/index.ts';
import { newMovement } from '../new-movement.ts';
import { record, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewOne } from './get-order.ts';
import { refuseTrackingOfErased } from './tracking-of-erased.ts';

async function findParcel(tx: Writer, id: string): Promise<DispatchRow> {
  return (await findDispatch(tx, id)) ?? giveUp(thingNotFound('id', id));
}

/** The carrier's number, where it is known only after the parcel went. */
export const saveTracking: UseCase<'saveTracking'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const parcel = await findParcel(tx, params.id ?? '');
      const order = await findOrder(tx, parcel.order_id);
      if (order) await refuseTrackingOfErased(tx, order, body.tracking);
      await tell({
        kind: 'tracking-noted',
        subjectKind: 'order',
        subjectId: parcel.order_id,
        // The number itself leads to the customer's door: it must not be in the chain for ever.
        payload: { dispatchId: parcel.id, hasTracking: body.tracking !== '' },
      });
      await setTracking(tx, parcel.id, body.tracking);
      return parcel.order_id;
    },
    (id) => viewOne(context, id),
  );

/** Always the same words: what a person typed here could name a customer, and a movement stays for ever. */
const NOT_SENT = 'not sent after all';

/**
 * A parcel that did not go after all: its tins stand where they were taken from, and the order waits for them again.
 * What was written stays; the movements are written once more the other way.
 */
export const takeParcelBack: UseCase<'takeParcelBack'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const parcel = await findParcel(tx, params.id ?? '');
      const moved = await listMovementsOfDispatches(tx, [parcel.id]);
      if (moved.reduce((sum, row) => sum + row.quantity, 0) >= 0)
        giveUp(problem('parcel-back-already', 'parcel'));
      const back = moved.map(({ lot_id, place_id, order_line_id, quantity }) => ({
        lot_id,
        place_id,
        order_line_id,
        quantity: -quantity,
      }));
      await tell({
        kind: 'parcel-not-sent',
        subjectKind: 'order',
        subjectId: parcel.order_id,
        payload: { dispatchId: parcel.id, back },
      });
      await insertMovements(
        tx,
        back.map((row) =>
          newMovement(context, body.stamp.id, {
            ...row,
            kind: 'sold',
            dispatch_id: parcel.id,
            reason: NOT_SENT,
          }),
        ),
      );
      return parcel.order_id;
    },
    (id) => viewOne(context, id),
  );
