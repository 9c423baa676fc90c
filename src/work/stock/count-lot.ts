import { done } from '../../core/problem.ts';
import { giveUp, insertMovements, listMovementsOfEntry, orGiveUp } from '../../storage/index.ts';
import { newMovement } from '../new-movement.ts';
import { amountText } from '../quantity-text.ts';
import { record } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { judgeCount } from './judge-count.ts';
import { findLotAtHand, lotToChange, standingMeant } from './lot-on-bench.ts';
import { readCounted, type Unit } from './read-quantity.ts';

/**
 * What is there is what was weighed or counted: the difference to the ledger is booked with a reason. A count that
 * agrees is booked too, as a difference of nought, so that it is known when somebody looked. What is more than the
 * ledger has is asked about, and more than ever came in is refused.
 */
export const countLot: UseCase<'countLot'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const lot = await lotToChange(tx, params.id ?? '');
      const counted = orGiveUp(readCounted(body, lot.unit as Unit));
      const standing = await standingMeant(tx, lot, body.placeId, 'placeId');
      const { grossGrams, tareGrams, pieces, reason, isGainSure } = body;
      const before = standing.quantity;
      const refusal = await judgeCount(tx, { lot, before, counted, isGainSure });
      if (refusal) giveUp(refusal);
      await tell({
        kind: 'lot-counted',
        subjectKind: 'lot',
        subjectId: lot.id,
        payload: {
          placeId: standing.place_id,
          grossGrams,
          tareGrams,
          pieces,
          before,
          counted,
          reason,
        },
      });
      await insertMovements(tx, [
        newMovement(context, body.stamp.id, {
          lot_id: lot.id,
          place_id: standing.place_id,
          kind: 'counted',
          quantity: counted - before,
          reason,
        }),
      ]);
      return lot.id;
    },
    async (id) => {
      const { db } = context.storage;
      const lot = await findLotAtHand(db, id);
      const [booked] = await listMovementsOfEntry(db, body.stamp.id);
      const unit = lot?.unit ?? 'g';
      return done({
        difference: amountText(booked?.quantity ?? 0, unit),
        onHand: amountText(lot?.on_hand ?? 0, unit),
      });
    },
  );
