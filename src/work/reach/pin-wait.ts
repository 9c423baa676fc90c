import { type Problem, problem } from '../../core/problem.ts';

const SECOND_MS = 1000;
const MINUTE_MS = 60 * SECOND_MS;
/** So many wrong PINs in a row are slips; after each further one it takes longer (common practice, no source). */
const WAITS_MS: Readonly<Record<number, number>> = {
  3: 30 * SECOND_MS,
  4: MINUTE_MS,
  5: 5 * MINUTE_MS,
  6: 15 * MINUTE_MS,
};
const LONGEST_MS = 60 * MINUTE_MS;
/** One in a thousand that a device guesses four digits in so many tries. */
export const PIN_TRIES = 10;

export interface Tries {
  readonly wrong: number;
  readonly lastAt: string;
}

const waitMs = (wrong: number): number => (wrong < 3 ? 0 : (WAITS_MS[wrong] ?? LONGEST_MS));

/** From when on another try is taken after so many wrong ones: an instant, `never`, or null for at once. */
export function nextTryAt({ wrong, lastAt }: Tries): string | 'never' | null {
  if (wrong >= PIN_TRIES) return 'never';
  const wait = waitMs(wrong);
  return wait === 0 ? null : new Date(Date.parse(lastAt) + wait).toISOString();
}

/** Why no PIN is looked at now, or nothing. */
export function whyWait(tries: Tries, now: string): Problem | undefined {
  const at = nextTryAt(tries);
  if (at === 'never') return problem('pin-locked', 'pin', { found: tries.wrong });
  if (at === null || Date.parse(now) >= Date.parse(at)) return undefined;
  return problem('pin-wait', 'pin', { found: tries.wrong, allowed: at });
}
