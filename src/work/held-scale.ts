import { type Problem, problem } from '../core/problem.ts';
import { findScale, findScaleCheckAt, type Reader } from '../storage/index.ts';
import { instantInUtc } from './instant-in-utc.ts';

interface HeldAsk {
  readonly at: string;
  readonly where: string;
  /** Whether somebody may say that it was weighed on it all the same, or has to take another. */
  readonly code?: 'scale-held' | 'scale-must-pass';
}

/**
 * Whether a scale had failed its check when something stood on it, whatever it was found to be later: an entry may reach
 * the file late. undefined: it might weigh then.
 */
export async function whyHeld(
  db: Reader,
  scaleId: string,
  { at, where, code = 'scale-held' }: HeldAsk,
): Promise<Problem | undefined> {
  const check = await findScaleCheckAt(db, scaleId, instantInUtc(at));
  if (check?.is_good !== 0) return undefined;
  const scale = await findScale(db, scaleId);
  const { reading_grams: reading, weight_grams: weight } = check;
  return problem(code, where, {
    found: scale?.name ?? scaleId,
    parameters: { reading, weight },
  });
}
