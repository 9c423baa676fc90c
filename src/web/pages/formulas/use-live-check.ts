import { useMemo } from 'react';
import type { RevisionCheck } from '../../../check/index.ts';
import type { Market } from '../../../contract/index.ts';
import type { Result } from '../../../core/problem.ts';
import { useCheckFacts, type WantedDraft } from './use-check-facts.ts';

/**
 * The check of what is typed, worked out here at every key, by the code that the workshop judges with. undefined: what it
 * hangs on is not read yet, or there is nothing typed to judge. `markets`: where its products are sold, unless others are
 * asked for.
 */
export function useLiveCheck(
  formulaId: string,
  draft: WantedDraft,
  markets: readonly Market[] = [],
): Result<RevisionCheck> | undefined {
  const { room, facts } = useCheckFacts(formulaId, draft !== null);
  return useMemo(() => {
    if (!room || !facts || draft === null) return undefined;
    return room.checkDraft(facts, draft, room.marketsAsked(facts, markets));
  }, [room, facts, draft, markets]);
}
