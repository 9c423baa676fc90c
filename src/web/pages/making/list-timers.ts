import type { Screen, Step } from './batch.ts';

/** A timer that runs: told from when its step began, so that it is right on every tablet and after every sleep. */
export interface RunningTimer {
  /** The entry that began it. */
  readonly key: string;
  readonly screen: number;
  readonly what: string;
  readonly begunAt: number;
  readonly begunBy: string;
  /** null: it runs until somebody looks or measures. */
  readonly endsAt: number | null;
  /** Of what sets: from the end on it may be firm, and from here on it should be. */
  readonly latestAt: number | null;
}

const MINUTE = 60_000;

const timesOf = (minutes: string | null): number | null =>
  minutes === null || !(Number(minutes) > 0) ? null : Number(minutes) * MINUTE;

type Begun = Step['begun'][number];

/** The beginning that runs: of whipping the one whose round nobody has looked at yet. */
export function runningBegun({ begun, whipped, stepKind, done }: Step): Begun | undefined {
  if (done) return undefined;
  if (stepKind !== 'whip') return begun.at(-1);
  return begun.findLast(
    ({ load, round }) => !whipped.some((each) => each.load === load && each.round === round),
  );
}

/** How long what runs is to run, in milliseconds; null where time does not end it. */
export function lengthOf(step: Step, begun: Begun): number | null {
  const chosen = timesOf(begun.minutes);
  if (chosen !== null) return chosen;
  if (step.stepKind === 'whip') return timesOf(step.roundMinutes);
  // What melts is heated first, for as long as it takes; then it is held.
  if (step.stepKind === 'melt' && begun.round === 1) return null;
  if (step.stepKind === 'set' && step.leastHours !== null) return Number(step.leastHours) * 60 * MINUTE;
  return timesOf(step.minutes);
}

export function timerOf(step: Step): RunningTimer | undefined {
  const begun = runningBegun(step);
  if (!begun) return undefined;
  const begunAt = Date.parse(begun.at);
  const length = lengthOf(step, begun);
  const latest = step.stepKind === 'set' && step.mostHours !== null ? Number(step.mostHours) : null;
  return {
    key: begun.entryId,
    screen: step.screen,
    what: step.what,
    begunAt,
    begunBy: begun.by,
    endsAt: length === null ? null : begunAt + length,
    latestAt: latest === null ? null : begunAt + latest * 60 * MINUTE,
  };
}

/** Every timer of a batch that runs, the one that ends first in front; what has no end comes last. */
export const listTimers = (screens: readonly Screen[]): RunningTimer[] =>
  screens
    .flatMap((screen) => (screen.kind === 'step' ? [timerOf(screen)] : []))
    .filter((timer) => timer !== undefined)
    .toSorted((one, other) => (one.endsAt ?? Infinity) - (other.endsAt ?? Infinity));

/** Minutes that went by, to a tenth and never more than they were: 19:59 of a hold are no 20. */
export const minutesSince = (from: number, to: number): string =>
  String(Math.floor(Math.max(0, to - from) / (MINUTE / 10)) / 10);

/** How long it took: the timer that ran says it, whatever was typed before it began. */
export const minutesTold = (byTimer: string | null | undefined, typed: string | null): string | null =>
  byTimer ?? typed;

const pad = (whole: number): string => String(whole).padStart(2, '0');

/** `4:05`, `1:04:05`; seconds are taken up while it counts down, so that nought is the end. */
export function sayClock(ms: number): string {
  const seconds = Math.max(0, Math.ceil(ms / 1000 - 1e-6));
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  return hours > 0 ? `${hours}:${pad(minutes)}:${pad(seconds % 60)}` : `${minutes}:${pad(seconds % 60)}`;
}
