import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import type { FormulaDraft, ReadFacts } from '../../../check/index.ts';
import { useRead } from '../../api/use-read.ts';

export type CheckCode = typeof import('../../../check/index.ts');

/** null: nothing is typed that is not written. */
export type WantedDraft = FormulaDraft | null;

/**
 * The workshop's own code with the published tables, fetched once somebody types and never again, and what it hangs on
 * besides what is typed. undefined: not read yet, or not wanted.
 */
export function useCheckFacts(
  formulaId: string,
  isWanted: boolean,
): { readonly room: CheckCode | undefined; readonly facts: ReadFacts | undefined } {
  const { data: room } = useQuery({
    queryKey: ['the room that checks'],
    queryFn: () => import('../../../check/index.ts'),
    staleTime: Number.POSITIVE_INFINITY,
    enabled: isWanted,
  });
  const { data } = useRead('getCheckFacts', { params: { id: formulaId } }, { isWanted });
  const facts = useMemo(() => data && room?.readFacts(data), [data, room]);
  return { room, facts };
}
