import type { LotAtHand } from '../../storage/index.ts';
import { isInTins } from '../filling/name-hold.ts';
import type { OrderBook } from './read-order-book.ts';

type Book = Pick<OrderBook, 'today' | 'stoppedBehind' | 'heldRuns'>;

/** Filled and closed, not decided yet, and nothing in the tins stands against their release. */
export const isWaiting = ({ today, stoppedBehind, heldRuns }: Book, lot: LotAtHand): boolean =>
  lot.status === 'quarantine' &&
  lot.made_as !== 'trial' &&
  (lot.best_before ?? today) >= today &&
  !stoppedBehind.has(lot.id) &&
  !(heldRuns.get(lot.filling_run_id ?? '') ?? []).some(isInTins);
