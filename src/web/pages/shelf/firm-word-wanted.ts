import type { Lot } from './shelf-item.ts';

/**
 * Which word of a person a base or a bowl waits for: that it is firm, or, past the day until which it is kept, that it
 * was looked at again. The workshop judges the word itself.
 */
export function firmWordWanted(
  lot: Pick<Lot, 'itemKind' | 'status' | 'firmFrom' | 'keepUntil'>,
  today: string,
): 'firm' | 'looked-at' | null {
  if (lot.itemKind !== 'formula' || lot.status === 'blocked' || lot.status === 'rejected') return null;
  if (lot.status === 'quarantine' && lot.firmFrom !== null) return 'firm';
  return lot.keepUntil !== null && lot.keepUntil < today ? 'looked-at' : null;
}
