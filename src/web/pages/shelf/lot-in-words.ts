import { sayDateWithYear, shelfWords } from '../../../words/index.ts';
import { showAmount } from '../../show/show-amount.ts';
import type { Lot } from './shelf-item.ts';

const { says } = shelfWords.lot;

/** What a lot is good for, in one sentence. What is judged here was judged by the workshop: status and expiry. */
export function lotInWords(
  lot: Pick<Lot, 'onHand' | 'unit' | 'itemName' | 'status' | 'isExpired' | 'bestBefore' | 'firmFrom'>,
): string {
  const { itemName, status, isExpired, bestBefore } = lot;
  if (lot.onHand === '0') return says.empty(itemName);
  const amount = showAmount(lot.onHand, lot.unit);
  if (isExpired && status === 'released' && bestBefore !== null) {
    return says.expired(amount, itemName, sayDateWithYear(bestBefore));
  }
  if (status === 'quarantine' && lot.firmFrom !== null) return says.setting(amount, itemName);
  return says[status](amount, itemName);
}
