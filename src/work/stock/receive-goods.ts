import { problem } from '../../core/problem.ts';
import { giveUp, orGiveUp } from '../../storage/index.ts';
import { inside } from '../inside.ts';
import { localDate, workshopZone } from '../local-date.ts';
import { record, viewId } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import type { MaterialDetails } from './material-view.ts';
import { readQuantity, unitOfMaterial } from './read-quantity.ts';
import { materialTakenIn, placeTakenIn, planLot, writeArrival } from './take-in.ts';

/** New goods: accepted, so that they may be used, or held in quarantine until somebody has looked. */
export const receiveGoods: UseCase<'receiveGoods'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const material = await materialTakenIn(tx, body.materialId);
      const quantity = orGiveUp(readQuantity(body.quantity, unitOfMaterial(material.kind)));
      const placeId = await placeTakenIn(tx, body.placeId);
      const since = localDate(body.stamp.at, await workshopZone(inside(context, tx)));
      if (body.accept && body.bestBefore !== null && body.bestBefore < since)
        giveUp(problem('received-past-date', 'bestBefore', { found: body.bestBefore, allowed: since }));
      const usual = (JSON.parse(material.details) as MaterialDetails).supplier;
      const lot = await planLot(context, tx, {
        ...body,
        material,
        placeId,
        quantity,
        since,
        supplier: body.supplier === '' ? usual : body.supplier,
        foundAtOpening: false,
      });
      const status = body.accept ? 'released' : 'quarantine';
      await tell({
        kind: 'lot-received',
        subjectKind: 'lot',
        subjectId: lot.id,
        payload: { lot, placeId, status, reason: body.reason },
      });
      await writeArrival(context, tx, {
        entryId: body.stamp.id,
        lot,
        placeId,
        status,
        reason: body.reason,
        kind: 'received',
      });
      return lot.id;
    },
    viewId,
  );
