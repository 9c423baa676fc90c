import { type Problem, problem } from '../problem.ts';
import { type ExactInput, exact } from '../quantity/index.ts';

export interface Closing {
  /** By the average way: how much is missing over all tins for their mean to reach the label; null: it does. */
  readonly missingGrams: ExactInput | null;
  readonly tins: number;
  /** Numbers of tins that were weighed on a scale that had not passed its check. */
  readonly onHeldScale: readonly number[];
  /** Tins that were put aside and not put back into the bowl, and how many were counted as spoilt. */
  readonly putAside: number;
  readonly spoiltTins: number;
  /** What would be booked as thrown away. */
  readonly lostGrams: ExactInput;
  /** Other runs that are still being filled from the same bowl, with what one tin of theirs takes. */
  readonly others: readonly { readonly number: string; readonly aimGrams: ExactInput }[];
}

/** What is asked before a run is closed, and taken once a person says that it is so. */
export const closeQuestionCodes = [
  'tins-on-held-scale',
  'mean-below-label',
  'tins-put-aside',
  'bowl-filled-elsewhere',
] as const;

/**
 * A run is closed once: what cannot be mended afterwards is asked before. The gravest first: a mean by which no release can
 * pass, tins that left the bench without being counted, a bowl that another run is still filled from and that would be
 * empty by the book.
 */
export const askBeforeClose = (closing: Closing): Problem[] =>
  [askHeld(closing), askMean(closing), askAside(closing), askElsewhere(closing)].filter(
    (each) => each !== null,
  );

const askHeld = ({ onHeldScale }: Closing): Problem | null =>
  onHeldScale.length === 0
    ? null
    : problem('tins-on-held-scale', 'weights', {
        found: onHeldScale.length,
        parameters: { numbers: onHeldScale.join(', ') },
      });

const askMean = ({ missingGrams, tins }: Closing): Problem | null =>
  missingGrams === null
    ? null
    : problem('mean-below-label', 'weights', {
        found: exact(missingGrams).toFixed(),
        parameters: { tins },
      });

const askAside = ({ putAside, spoiltTins }: Closing): Problem | null =>
  spoiltTins >= putAside
    ? null
    : problem('tins-put-aside', 'spoiltTins', { found: spoiltTins, allowed: putAside });

/** Less than a tin of the other run is what stays in a bowl anyway. */
function askElsewhere({ lostGrams, others }: Closing): Problem | null {
  const waiting = others.filter(({ aimGrams }) => exact(lostGrams).gte(aimGrams));
  if (waiting.length === 0) return null;
  return problem('bowl-filled-elsewhere', 'leftGrams', {
    found: exact(lostGrams).toFixed(),
    parameters: { runs: waiting.map(({ number }) => number).join(', ') },
  });
}
