import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import type { Batch } from './batch.ts';
import { useAhead } from './use-ahead.ts';

const wishOf = (itemName: string) => ({ query: { like: itemName } });

/** Released lots of one thing, whatever is left of them; undefined: nobody has told yet, or the workshop is silent. */
export const useLotsOf = (
  itemId: string,
  itemName: string,
  isWanted = true,
): AnswerOf<'findLots'> | undefined =>
  useRead('findLots', wishOf(itemName), { isWanted }).data?.filter(
    (lot) => lot.itemId === itemId && lot.status === 'released',
  );

/** A lot may run out when the workshop is silent. */
export function useLotsAhead({ screens }: Batch): void {
  const names = screens.flatMap((each) => (each.kind === 'addition' ? [each.itemName] : []));
  useAhead('findLots', [...new Set(names)].map(wishOf));
}
