import type { Problem } from '../../core/problem.ts';

/** Fields that were changed since the problems were found, each with what stood in it then. */
export type Changes = ReadonlyMap<string, string | null>;

/** A sentence about two figures quotes both: it is old as soon as either of them changes. */
const quotes = ({ found, allowed }: Problem, before: string | null): boolean =>
  before !== null && before.trim() !== '' && (String(found) === before || String(allowed) === before);

/**
 * Problems that still speak of what stands in the form: one goes when its own field changes, or a figure that it quotes;
 * one that belongs to no field of the form goes with any change, since any may have mended it.
 */
export function standingProblems(
  problems: readonly Problem[],
  changes: Changes,
  fields: ReadonlySet<string>,
): readonly Problem[] {
  if (changes.size === 0) return problems;
  const isOld = (problem: Problem): boolean =>
    changes.has(problem.where) ||
    !fields.has(problem.where) ||
    [...changes.values()].some((before) => quotes(problem, before));
  return problems.filter((problem) => !isOld(problem));
}
