import { problem } from '../problem.ts';
import { type Exact, type ExactInput, exact, largest } from '../quantity/index.ts';
import { askAboutReading, type ReadingQuestion } from './ask-about-reading.ts';

export interface TestReading {
  readonly grams: ExactInput;
  /** About what the weight weighs. */
  readonly weightGrams: ExactInput;
  readonly readabilityGrams: ExactInput;
  readonly capacityGrams: ExactInput;
  /** The readings before it in the same test. */
  readonly earlier: readonly ExactInput[];
}

/** A scale that repeats at all shows the same weight within so many steps, or so much of it (common practice, no source). */
const STEPS_APART = 10;
const SHARE_APART = '0.005';

/**
 * Whether a reading of a test of repeatability looks like a slip: as askAboutReading, and where it lies far from the
 * readings before it, or the first one far from what the weight says, as when the scale did not stand at nought.
 */
export function askAboutTestReading(reading: TestReading): ReadingQuestion | null {
  const grams = exact(reading.grams);
  const weight = exact(reading.weightGrams);
  const question = askAboutReading({
    grams,
    targetGrams: weight,
    readabilityGrams: reading.readabilityGrams,
    capacityGrams: reading.capacityGrams,
  });
  if (question) return question;
  const near = middleOf(reading.earlier.map(exact)) ?? weight;
  const far = largest(exact(reading.readabilityGrams).times(STEPS_APART), near.times(SHARE_APART));
  if (grams.minus(near).abs().lte(far)) return null;
  const code = 'reading-not-zeroed';
  return {
    ...problem(code, 'grams', {
      found: grams.toFixed(),
      allowed: near.toFixed(),
      parameters: { offGrams: grams.minus(near).abs().toFixed() },
    }),
    code,
  };
}

function middleOf(values: readonly Exact[]): Exact | undefined {
  const sorted = [...values].sort((one, other) => one.comparedTo(other));
  return sorted[Math.floor(sorted.length / 2)];
}
