import type { LotAtHand } from '../../storage/index.ts';
import { isUsable } from '../lot-use.ts';
import type { OrderBook } from './read-order-book.ts';

/** May be used or sent today: itself, and by every lot behind it. */
export const mayGo = (
  { today, stoppedBehind }: Pick<OrderBook, 'today' | 'stoppedBehind'>,
  lot: LotAtHand,
): boolean => isUsable(lot, today) && !stoppedBehind.has(lot.id);
