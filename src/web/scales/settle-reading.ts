import type { ScaleReading } from './reading.ts';

/** A scale that has not settled by then stands in a draught or shakes (common practice, no source). */
export const SETTLES_WITHIN_MS = 8000;
/** Equal readings in a row that count as settled, where the scale itself marks nothing (common practice, no source). */
const EQUAL_IN_A_ROW = 3;

/** One that tells all the time does so at least this often (common practice, no source). */
const OFTEN_MS = 2000;
/** It is known for one after so long; what is printed once, in several lines, takes less (common practice, no source). */
const KNOWN_AFTER_MS = 3000;
/** How long a reading speaks for what lies on the scale: of one that tells all the time, and of one that is asked to (common practice, no source). */
const GOOD_FOR_MS = { always: 4000, asked: 120_000 } as const;

export interface Settling {
  readonly reading: ScaleReading | null;
  /** When it began to move; null: it stands, or tells nothing. */
  readonly movingSince: number | null;
  readonly equal: number;
  /** When it told the last time; null: never. */
  readonly toldAtMs: number | null;
  /** Since when it told the same without a pause. */
  readonly steadySinceMs: number | null;
  readonly tellsAlways: boolean;
  /** What a person took; until it moved it is the same thing that lies on it. null: nothing, or it moved since. */
  readonly takenGrams: string | null;
}

export const NOTHING_READ: Settling = {
  reading: null,
  movingSince: null,
  equal: 0,
  toldAtMs: null,
  steadySinceMs: null,
  tellsAlways: false,
  takenGrams: null,
};

export type SettlesBy = 'mark' | 'equal';

/** The next reading of a scale that tells one after another, at a moment in milliseconds. */
export function settleReading(before: Settling, read: ScaleReading, atMs: number, by: SettlesBy): Settling {
  const isEqual = read.grams !== null && read.grams === before.reading?.grams;
  const equal = isEqual ? before.equal + 1 : 1;
  const isStable = read.isStable && (by === 'mark' || equal >= EQUAL_IN_A_ROW);
  const isMoving = read.grams !== null && !isStable;
  return {
    reading: { ...read, isStable },
    movingSince: isMoving ? (before.movingSince ?? atMs) : null,
    equal,
    ...hear(before, atMs, isEqual),
    takenGrams: isStillTaken(before, read, atMs) ? before.takenGrams : null,
  };
}

type Heard = Pick<Settling, 'toldAtMs' | 'steadySinceMs' | 'tellsAlways'>;

/** One that only tells what is new to it tells nothing while the same lies on it, so only equal readings show the other kind. */
function hear(before: Settling, atMs: number, isEqual: boolean): Heard {
  const isBroken = !isEqual || isPause(before, atMs);
  const steadySinceMs = isBroken ? atMs : (before.steadySinceMs ?? atMs);
  const tellsAlways = before.tellsAlways || atMs - steadySinceMs >= KNOWN_AFTER_MS;
  return { toldAtMs: atMs, steadySinceMs, tellsAlways };
}

const isPause = ({ toldAtMs }: Settling, atMs: number): boolean =>
  toldAtMs === null || atMs - toldAtMs > OFTEN_MS;

/** One that tells when it is asked to was asked anew: that is another weighing, though it be of the same weight. */
function isStillTaken(before: Settling, { grams, isStable }: ScaleReading, atMs: number): boolean {
  const isAskedAnew = !before.tellsAlways && isPause(before, atMs);
  return isStable && grams === before.takenGrams && !isAskedAnew;
}

/** For how long it has told nothing, where it should have by now; null: what it told speaks for what lies on it. */
export function silentForMs({ toldAtMs, tellsAlways }: Settling, nowMs: number): number | null {
  if (toldAtMs === null) return null;
  const silentMs = nowMs - toldAtMs;
  return silentMs > GOOD_FOR_MS[tellsAlways ? 'always' : 'asked'] ? silentMs : null;
}

/** What may be taken now: settled, told just now, and not taken already. null: nothing. */
export function offeredGrams(settling: Settling, nowMs: number): string | null {
  const { reading, takenGrams } = settling;
  if (!reading?.isStable || silentForMs(settling, nowMs) !== null || takenGrams !== null) return null;
  return reading.grams;
}

export const isRestless = ({ movingSince }: Settling, nowMs: number): boolean =>
  movingSince !== null && nowMs - movingSince >= SETTLES_WITHIN_MS;
