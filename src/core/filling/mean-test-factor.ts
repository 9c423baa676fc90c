import { type Exact, exact } from '../quantity/index.ts';
import { studentQuantile } from './student-quantile.ts';

/** The law prints its factors with three places. */
const PLACES = 3;
const PROBABILITY = 0.995;

/**
 * Factor k of the test of the mean: a sample passes when its mean is not below nominal - k s. No unit.
 *
 * Equation: k = t(0.995; n - 1) / sqrt(n), rounded to three places as printed: 0.640 for 20 packs, 0.503 for 30,
 * 0.379 for 50 (Directive 76/211/EEC Annex II; SI 2006/659 Schedule 2), 0.295 for 80 and 0.234 for 125 (OIML R 87:2004).
 * It is taken for the number of packs that were weighed, so that 50 packs are never judged by the wider margin of 30.
 * Valid range: 2 packs and more.
 */
export const meanTestFactor = (sampleSize: number): Exact =>
  exact((studentQuantile(PROBABILITY, sampleSize - 1) / Math.sqrt(sampleSize)).toFixed(PLACES));
