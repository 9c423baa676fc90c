import { useMemo } from 'react';
import type { Market } from '../../../contract/index.ts';
import type { Problem } from '../../../core/problem.ts';
import { problemsOf } from '../../api/problems-of.ts';
import { useRead } from '../../api/use-read.ts';
import { useSettled } from '../../api/use-settled.ts';
import type { Room } from './span-of-room.ts';
import { useCheckFacts, type WantedDraft } from './use-check-facts.ts';

export interface RoomRead {
  readonly room: Room | undefined;
  readonly problems: readonly Problem[];
  /** What is shown is of what was typed before. */
  readonly isBehind: boolean;
}

/** The room of the recipe as it is written, by the workshop; of what is tried, worked out here once typing rests. */
export function useRoom(
  revision: { id: string; formulaId: string },
  markets: string,
  draft: WantedDraft,
): RoomRead {
  const { data, error } = useRead(
    'getRoom',
    { params: { id: revision.id }, query: markets === '' ? {} : { markets } },
    { keepsLast: true },
  );
  const settled = useSettled(draft);
  const { room: code, facts } = useCheckFacts(revision.formulaId, settled !== null);
  const asked = useMemo(() => (markets === '' ? [] : (markets.split(',') as Market[])), [markets]);
  const tried = useMemo(() => {
    if (!code || !facts || settled === null) return undefined;
    const found = code.findRoom(facts, settled, code.marketsAsked(facts, asked));
    return found.ok
      ? { room: code.viewRoom(facts, settled, found.value), problems: [] }
      : { ...found, room: undefined };
  }, [code, facts, settled, asked]);
  if (draft === null) return { room: data, problems: error ? problemsOf(error) : [], isBehind: false };
  return { room: tried?.room, problems: tried?.problems ?? [], isBehind: settled !== draft };
}
