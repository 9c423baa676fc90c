import { problem } from '../../core/problem.ts';
import { giveUp, orGiveUp } from '../../storage/index.ts';
import { inside } from '../inside.ts';
import { localDate, workshopZone } from '../local-date.ts';
import { record, viewId } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { readCounted, unitOfMaterial } from './read-quantity.ts';
import { materialTakenIn, placeTakenIn, planLot, writeArrival } from './take-in.ts';

/**
 * A tub or a box found on the shelf on the first day. It may be used; what nobody knows of it (lot, date, price) stays
 * marked so, and nothing is made up for it.
 */
export const countAtOpening: UseCase<'countAtOpening'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const material = await materialTakenIn(tx, body.materialId);
      const quantity = orGiveUp(readCounted(body, unitOfMaterial(material.kind)));
      if (quantity === 0) giveUp(problem('nothing-found', 'grossGrams', { found: material.name }));
      const placeId = await placeTakenIn(tx, body.placeId);
      const since = localDate(body.stamp.at, await workshopZone(inside(context, tx)));
      const lot = await planLot(context, tx, {
        ...body,
        material,
        placeId,
        quantity,
        since,
        supplier: '',
        foundAtOpening: true,
      });
      const { grossGrams, tareGrams, pieces } = body;
      await tell({
        kind: 'lot-found',
        subjectKind: 'lot',
        subjectId: lot.id,
        payload: { lot, placeId, grossGrams, tareGrams, pieces },
      });
      await writeArrival(context, tx, {
        entryId: body.stamp.id,
        lot,
        placeId,
        status: 'released',
        reason: '',
        kind: 'counted',
      });
      return lot.id;
    },
    viewId,
  );
