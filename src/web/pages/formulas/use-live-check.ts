import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import type { FormulaDraft, RevisionCheck } from '../../../check/index.ts';
import type { Market } from '../../../contract/index.ts';
import type { Result } from '../../../core/problem.ts';
import { useRead } from '../../api/use-read.ts';

const ALL: readonly Market[] = ['GB', 'NI', 'EU'];

/** The workshop's own code with the published tables: fetched once somebody types, and never again. */
const useCheckRoom = (isWanted: boolean) =>
  useQuery({
    queryKey: ['the room that checks'],
    queryFn: () => import('../../../check/index.ts'),
    staleTime: Number.POSITIVE_INFINITY,
    enabled: isWanted,
  }).data;

/**
 * The check of what is typed, worked out here at every key, by the code that the workshop judges with. undefined: what it
 * hangs on is not read yet, or there is nothing typed to judge. `markets`: where its products are sold, unless others are
 * asked for.
 */
export function useLiveCheck(
  formulaId: string,
  draft: FormulaDraft | null,
  markets: readonly Market[] = [],
): Result<RevisionCheck> | undefined {
  const isWanted = draft !== null;
  const room = useCheckRoom(isWanted);
  const { data } = useRead('getCheckFacts', { params: { id: formulaId } }, { isWanted });
  const facts = useMemo(() => data && room?.readFacts(data), [data, room]);
  return useMemo(() => {
    if (!room || !facts || draft === null) return undefined;
    const sold = facts.sold.markets.length > 0 ? facts.sold.markets : ALL;
    return room.checkDraft(facts, draft, markets.length > 0 ? markets : sold);
  }, [room, facts, draft, markets]);
}
