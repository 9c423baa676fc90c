import { useMemo } from 'react';
import type { FoundScent, ReadFacts, RevisionCheck, ScentWish } from '../../../check/index.ts';
import { done, type Result } from '../../../core/problem.ts';
import { exact, toText } from '../../../core/quantity/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import type { Formula } from './formula.ts';
import { type ReadScent, readScent } from './read-scent.ts';
import { gramsWith, hasScent, type ScentDraft } from './scent-draft.ts';
import { type CheckCode, useCheckFacts } from './use-check-facts.ts';

type Scale = AnswerOf<'getWorkshop'>['scales'][number];

export interface ScentView {
  readonly oils: ReadScent['oils'];
  readonly batchGrams: string | undefined;
  readonly found: FoundScent;
  /** The check of the formula with what was found, and what it leaves open; none where it cannot be checked. */
  readonly check: RevisionCheck | undefined;
  /** What the oils are weighed on; undefined: nothing is chosen. */
  readonly scale: Scale | undefined;
  /** The least that this scale weighs well enough, in grams. */
  readonly leastGrams: string | null;
}

/**
 * Worked out here, at every key, by the workshop's own code; refused while a figure cannot be used as it is typed.
 * undefined: not read yet, or nothing counts as scent.
 */
export function useScent(
  formula: Formula,
  revision: NonNullable<Formula['latest']>,
  draft: ScentDraft,
): Result<ScentView> | undefined {
  const { room, facts } = useCheckFacts(formula.id, true);
  const { data: workshop } = useRead('getWorkshop');
  return useMemo(() => {
    if (!room || !facts || !workshop || !hasScent(draft)) return undefined;
    const read = readScent(draft);
    if (!read.ok) return read;
    const { oils, mostPercent, batchGrams } = read.value;
    const wish: ScentWish = { oils, markets: formula.soldIn, mostPercent };
    const scale = workshop.scales.find((one) => one.id === draft.scaleId);
    const found = findWith(room, { facts, revision, wish, scale, batchGrams }, workshop.scales);
    if (!found.ok) return found;
    const check = checkFound(room, { facts, revision, wish }, found.value);
    const leastGrams = scale ? room.findLeastGrams(scale) : null;
    return done({ oils, batchGrams, found: found.value, check, scale, leastGrams });
  }, [room, facts, workshop, formula, revision, draft]);
}

interface Asked {
  readonly facts: ReadFacts;
  readonly revision: NonNullable<Formula['latest']>;
  readonly wish: ScentWish;
  readonly scale: Scale | undefined;
  readonly batchGrams: string | undefined;
}

/** First without errors, then with those at the loads that came out, which are no smaller than the final ones. */
function findWith(
  room: CheckCode,
  { facts, revision, wish, scale: oilScale, batchGrams }: Asked,
  scales: readonly Scale[],
): Result<FoundScent> {
  const plain = room.findScent(facts, revision.details, wish);
  if (!plain.ok || plain.value.percents.length === 0 || !oilScale || batchGrams === undefined) return plain;
  const restScale = scales.reduce((one, other) =>
    Number(other.capacityGrams) > Number(one.capacityGrams) ? other : one,
  );
  const errors = room.findWeighingErrors({ batchGrams, oilScale, restScale, percents: plain.value.percents });
  return errors.ok ? room.findScent(facts, revision.details, { ...wish, errors: errors.value }) : errors;
}

/** What somebody would still have to decide with these amounts, and what is decided already. */
function checkFound(
  room: CheckCode,
  { facts, revision, wish }: Pick<Asked, 'facts' | 'revision' | 'wish'>,
  found: FoundScent,
): RevisionCheck | undefined {
  if (found.verdict !== 'found') return undefined;
  const grams = gramsWith(
    revision.lines,
    wish.oils,
    found.percents.map((percent) => toText(percent)),
  );
  const { lines, ...details } = revision.details;
  const tried = lines
    .map((line, index) => ({ ...line, grams: grams[index] ?? line.grams }))
    .filter((line) => !exact(line.grams).isZero());
  const check = room.checkDraft(facts, { ...details, lines: tried }, wish.markets);
  return check.ok ? check.value : undefined;
}
