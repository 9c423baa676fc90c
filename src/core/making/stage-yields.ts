import { type Exact, type ExactInput, exact, ZERO } from '../quantity/index.ts';

/** What happened to the bowl, in order: something went in, or the whole was weighed. */
export type BowlEvent =
  | { readonly kind: 'in'; readonly grams: ExactInput }
  | { readonly kind: 'weighed' | 'made' | 'filled'; readonly name: string; readonly grams: ExactInput };

export interface StageYield {
  readonly name: string;
  readonly kind: 'weighed' | 'made' | 'filled';
  readonly expectedGrams: Exact;
  readonly foundGrams: Exact;
  /** Below nought where more was found than can be there. */
  readonly lossGrams: Exact;
  /** Of what should have been there; 0 where nothing should. */
  readonly lossPercent: Exact;
}

/**
 * What each stage left behind, in grams and percent of what should have been there.
 *
 * Equation: expected = found at the weighing before + what went in since; loss = expected - found; percent = 100 x loss /
 * expected. Exact: the losses add up to all that went in less the last found. Common practice, no source.
 */
export function findStageYields(events: readonly BowlEvent[]): StageYield[] {
  let expected: Exact = ZERO;
  const stages: StageYield[] = [];
  for (const event of events) {
    if (event.kind === 'in') {
      expected = expected.plus(event.grams);
      continue;
    }
    const found = exact(event.grams);
    const loss = expected.minus(found);
    stages.push({
      name: event.name,
      kind: event.kind,
      expectedGrams: expected,
      foundGrams: found,
      lossGrams: loss,
      lossPercent: expected.isZero() ? ZERO : loss.times(100).div(expected),
    });
    expected = found;
  }
  return stages;
}

/** What should lie in the bowl after all this, in grams. */
export function findBowlGrams(events: readonly BowlEvent[]): Exact {
  return events.reduce(
    (grams, event) => (event.kind === 'in' ? grams.plus(event.grams) : exact(event.grams)),
    ZERO,
  );
}
