import { useQueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import type { RouteName } from '../../../contract/index.ts';
import { call } from '../../api/call.ts';
import type { RequestOf } from '../../api/shapes.ts';

/** A day at the bench. */
const DAY_MS = 86_400_000;

/** Asked while the workshop is there, for when it is not; not asked again with each entry. */
export function useAhead<Name extends RouteName>(name: Name, requests: readonly RequestOf<Name>[]): void {
  const queryClient = useQueryClient();
  const asked = JSON.stringify(requests);
  useEffect(() => {
    for (const request of JSON.parse(asked) as RequestOf<Name>[]) {
      void queryClient.prefetchQuery({
        queryKey: [name, request],
        queryFn: ({ signal }) => call(name, request, signal),
        staleTime: DAY_MS,
        gcTime: DAY_MS,
      });
    }
  }, [queryClient, name, asked]);
}
