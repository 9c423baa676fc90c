import { done, refused } from '../../core/problem.ts';
import { listMovementsOfLot, type SignedMovement, sumByPlace } from '../../storage/index.ts';
import { say } from '../../words/index.ts';
import { workshopToday } from '../local-date.ts';
import { amountText } from '../quantity-text.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewLotsById } from './lot-view.ts';

export const getLot: UseCase<'getLot'> = async (context, { params: { id = '' } }) => {
  const { db } = context.storage;
  const [lot] = await viewLotsById(db, [id], await workshopToday(context));
  if (!lot) return refused(thingNotFound('id', id));
  const movements = await listMovementsOfLot(db, id);
  const places = await sumByPlace(db, id);
  return done({
    lot,
    movements: movements.map((row) => ({
      id: row.id,
      lotId: row.lot_id,
      kind: row.kind as 'counted',
      change: amountText(row.quantity, lot.unit),
      unit: lot.unit,
      place: row.place_name,
      reason: row.reason,
      at: row.happened_at,
      recordedAt: row.recorded_at,
      by: row.person_name,
      about: aboutOf(row),
    })),
    places: places
      .filter((place) => place.quantity !== 0)
      .map((place) => ({
        placeId: place.place_id,
        name: place.place_name,
        onHand: amountText(place.quantity, lot.unit),
      })),
  });
};

/** What the movement was for, where it was for something. */
function aboutOf(row: SignedMovement): string {
  if (row.order_number !== null)
    return say({ code: 'movement-for-order', parameters: { number: String(row.order_number) } });
  if (row.run_number !== null)
    return say({ code: 'movement-for-run', parameters: { number: row.run_number } });
  if (row.batch_number !== null)
    return say({ code: 'movement-for-batch', parameters: { number: row.batch_number } });
  return '';
}
