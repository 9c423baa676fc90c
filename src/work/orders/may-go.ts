import type { LotAtHand } from '../../storage/index.ts';
import { isUsable } from '../lot-use.ts';
import type { OrderBook } from './read-order-book.ts';

/** May be used or sent today: itself, by every lot behind it, and by its labels. */
export const mayGo = (
  { today, stoppedBehind, oldLabels }: Pick<OrderBook, 'today' | 'stoppedBehind' | 'oldLabels'>,
  lot: LotAtHand,
): boolean => isUsable(lot, today) && !stoppedBehind.has(lot.id) && !oldLabels.has(lot.id);
