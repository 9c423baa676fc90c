import { useRead } from '../../api/use-read.ts';

/** Released lots of one thing, whatever is left of them. */
export const useLotsOf = (itemId: string, itemName: string) =>
  (useRead('findLots', { query: { like: itemName } }).data ?? []).filter(
    (lot) => lot.itemId === itemId && lot.status === 'released',
  );
