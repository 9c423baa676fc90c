import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import type { FoundScent, ScentWish } from '../../../check/index.ts';
import type { Result } from '../../../core/problem.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { typedDecimal } from '../../show/typed-decimal.ts';
import type { Formula } from './formula.ts';
import { oilsOf, type ScentDraft } from './scent-draft.ts';

type Scale = AnswerOf<'getWorkshop'>['scales'][number];
type Room = typeof import('../../../check/index.ts');

export interface ScentView {
  readonly found: Result<FoundScent>;
  /** The least that the chosen scale weighs well enough, in grams; null: none is chosen. */
  readonly leastGrams: string | null;
}

/** Worked out here, at every key, by the workshop's own code. undefined: not read yet, or nothing counts as scent. */
export function useScent(
  formula: Formula,
  revision: NonNullable<Formula['latest']>,
  draft: ScentDraft,
): ScentView | undefined {
  const { data: room } = useQuery({
    queryKey: ['the room that checks'],
    queryFn: () => import('../../../check/index.ts'),
    staleTime: Number.POSITIVE_INFINITY,
  });
  const { data } = useRead('getCheckFacts', { params: { id: formula.id } });
  const { data: workshop } = useRead('getWorkshop');
  const facts = useMemo(() => data && room?.readFacts(data), [data, room]);
  return useMemo(() => {
    const oils = oilsOf(draft);
    if (!room || !facts || !workshop || oils.length === 0) return undefined;
    const wish: ScentWish = {
      oils,
      markets: formula.soldIn,
      ...(draft.mostPercent.trim() !== '' && { mostPercent: typedDecimal(draft.mostPercent) }),
    };
    const scale = workshop.scales.find((one) => one.id === draft.scaleId);
    return {
      found: findWith(room, { facts, revision, wish, draft }, workshop.scales),
      leastGrams: scale ? room.findLeastGrams(scale) : null,
    };
  }, [room, facts, workshop, formula, revision, draft]);
}

interface Asked {
  readonly facts: ReturnType<Room['readFacts']>;
  readonly revision: NonNullable<Formula['latest']>;
  readonly wish: ScentWish;
  readonly draft: ScentDraft;
}

/** First without errors, then with those at the loads that came out, which are no smaller than the final ones. */
function findWith(room: Room, { facts, revision, wish, draft }: Asked, scales: readonly Scale[]) {
  const plain = room.findScent(facts, revision.details, wish);
  const oilScale = scales.find((one) => one.id === draft.scaleId);
  const batchGrams = typedDecimal(draft.batchGrams);
  const isWeighed = oilScale !== undefined && Number(batchGrams) > 0;
  if (!plain.ok || plain.value.percents.length === 0 || !isWeighed) return plain;
  const restScale = scales.reduce((one, other) =>
    Number(other.capacityGrams) > Number(one.capacityGrams) ? other : one,
  );
  const errors = room.findWeighingErrors({ batchGrams, oilScale, restScale, percents: plain.value.percents });
  return errors.ok ? room.findScent(facts, revision.details, { ...wish, errors: errors.value }) : errors;
}
