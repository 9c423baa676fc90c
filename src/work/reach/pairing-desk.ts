import { done, problem, type Result, refused } from '../../core/problem.ts';
import { isSameSecret, randomDigits } from '../../machine/index.ts';

/** Long enough to trust the certificate first and type eight digits, short enough to be forgotten (common practice, no source). */
export const PAIRING_MS = 10 * 60_000;
/** One in twenty million that somebody guesses eight digits in so many tries. */
export const PAIRING_TRIES = 5;
const DIGITS = 8;

export interface OpenPairing {
  readonly code: string;
  readonly until: string;
  readonly triesLeft: number;
  /** Who opened it: they let the device in. */
  readonly by: string;
}

/**
 * One code at a time: it pairs one device, within ten minutes, and a few wrong ones end it. Kept in memory only: after a
 * restart nobody is let in until somebody asks for a code again.
 */
export class PairingDesk {
  #open: OpenPairing | null = null;
  #isLocked = false;
  readonly #newCode: () => string;

  constructor(newCode: () => string = () => randomDigits(DIGITS)) {
    this.#newCode = newCode;
  }

  open(by: string, now: string): void {
    const until = new Date(Date.parse(now) + PAIRING_MS).toISOString();
    this.#open = { code: this.#newCode(), until, triesLeft: PAIRING_TRIES, by };
    this.#isLocked = false;
  }

  close(): void {
    this.#open = null;
    this.#isLocked = false;
  }

  current(now: string): OpenPairing | null {
    if (this.#open !== null && Date.parse(now) >= Date.parse(this.#open.until)) this.#open = null;
    return this.#open;
  }

  /** Whether it is the right code; a wrong one counts. */
  judge(code: string, now: string): Result<OpenPairing> {
    const open = this.current(now);
    if (open === null) return refused(problem(this.#isLocked ? 'pairing-locked' : 'pairing-closed', 'code'));
    return isSameSecret(code, open.code) ? done(open) : this.#countWrong(open);
  }

  /** The right code is used up by it. */
  use(code: string, now: string): Result<OpenPairing> {
    const open = this.judge(code, now);
    if (open.ok) this.close();
    return open;
  }

  #countWrong(open: OpenPairing): Result<never> {
    const triesLeft = open.triesLeft - 1;
    this.#isLocked = triesLeft === 0;
    this.#open = this.#isLocked ? null : { ...open, triesLeft };
    return refused(
      this.#isLocked
        ? problem('pairing-locked', 'code')
        : problem('pairing-wrong', 'code', { allowed: triesLeft }),
    );
  }
}
