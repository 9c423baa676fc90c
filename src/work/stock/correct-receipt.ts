import { problem } from '../../core/problem.ts';
import { giveUp, type LotAtHand, type MovementRow, shelfPlaceId, type Writer } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { spreadOverPlaces } from '../lot-use.ts';
import { newMovement } from '../new-movement.ts';
import { amountText } from '../quantity-text.ts';
import type { RequestOf } from '../use-case.ts';

type Correction = Pick<RequestOf<'correctLot'>['body'], 'stamp' | 'reason'> & { readonly received: number };

/**
 * What a corrected receipt books: the difference, as received, where the lot stands. Nothing where it stays. Refused
 * where more has gone out of the lot than would have come in.
 */
export async function correctReceipt(
  context: Context,
  tx: Writer,
  lot: LotAtHand,
  { received, stamp, reason }: Correction,
): Promise<MovementRow[]> {
  const difference = received - lot.received;
  if (difference === 0) return [];
  const kind = lot.found_at_opening === 1 ? 'counted' : 'received';
  const booked = (place_id: string, quantity: number) =>
    newMovement(context, stamp.id, { lot_id: lot.id, place_id, kind, quantity, reason });
  if (difference > 0) return [booked(lot.places[0]?.place_id ?? (await shelfPlaceId(tx)), difference)];
  if (lot.on_hand + difference < 0) {
    giveUp(
      problem('receipt-below-gone', 'quantity', {
        found: amountText(received, lot.unit),
        allowed: amountText(lot.received - lot.on_hand, lot.unit),
        parameters: { item: lot.item_name, unit: lot.unit },
      }),
    );
  }
  return spreadOverPlaces(lot, -difference).map((taking) => booked(taking.place_id, -taking.quantity));
}
