import type { steps } from '../../../contract/index.ts';
import { type Exact, exact, ZERO } from '../../../core/quantity/index.ts';
import type { Batch, Step } from './batch.ts';
import { densitiesOf, readAir, type TinAir, unwhippedOf } from './read-air.ts';
import { cupSoFar } from './step-weighing.ts';
import { bowlBefore } from './use-step-entry.ts';

type FullCup = steps.FullCup;

/** A cup with all its figures; undefined while one is missing or cannot be meant. */
export function fullCupOf(weighed: steps.StepWeighed | null, tinOf = ''): FullCup | undefined {
  if (!weighed || weighed.cupMl === null || !cupSoFar(weighed)) return undefined;
  return { ...weighed, cupMl: weighed.cupMl, tinOf };
}

/** Cups after which a load was whipped: all of them are the bowl as it is filled. */
export const finalCups = ({ screens }: Batch): FullCup[] =>
  screens.flatMap((screen) =>
    screen.kind === 'step'
      ? screen.whipped.filter(({ goes }) => goes === 'stop').flatMap(({ cups }) => cups)
      : [],
  );

interface Now {
  readonly cups: readonly FullCup[];
  readonly before: Exact | null;
}

/** Each tin as these cups see it, with what lies in the bowl less the sample that is kept. */
export function judgeBowl(
  batch: Batch,
  screen: Step,
  { cups, before }: Now,
): { readonly found: readonly TinAir[]; readonly cups: number } {
  const gramsPerMl = densitiesOf(cups);
  const found = readAir({
    tins: gramsPerMl.length === 0 ? [] : screen.tins,
    gramsPerMl,
    before,
    unwhipped: unwhippedOf(cups, screen.air?.unwhippedGramsPerMl ?? null),
    bowlGrams: bowlLessSample(batch, screen),
  });
  return { found, cups: gramsPerMl.length };
}

function bowlLessSample(batch: Batch, screen: Step): Exact {
  const left = bowlBefore(batch, screen).minus(exact(batch.retained.grams ?? 0));
  return left.gt(0) ? left : ZERO;
}
