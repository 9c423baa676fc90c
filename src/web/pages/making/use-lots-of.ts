import { useQueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import { call } from '../../api/call.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import type { Batch } from './batch.ts';

/** A day at the bench. */
const DAY_MS = 86_400_000;
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

/** Asked while the workshop is there, since a lot may run out when it is not. Not asked again with each entry. */
export function useLotsAhead({ screens }: Batch): void {
  const queryClient = useQueryClient();
  const all = screens.flatMap((each) => (each.kind === 'addition' ? [each.itemName] : []));
  const names = JSON.stringify([...new Set(all)]);
  useEffect(() => {
    for (const itemName of JSON.parse(names) as string[]) {
      const wish = wishOf(itemName);
      void queryClient.prefetchQuery({
        queryKey: ['findLots', wish],
        queryFn: ({ signal }) => call('findLots', wish, signal),
        staleTime: DAY_MS,
        gcTime: DAY_MS,
      });
    }
  }, [queryClient, names]);
}
