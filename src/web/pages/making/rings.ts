import { keptInTab } from '../../api/kept.ts';
import type { RunningTimer } from './list-timers.ts';

/** Often enough to be heard from the next room, and not for ever (common practice, no source). */
const EVERY_MS = 20_000;
const MOST_RINGS = 6;
/** Whoever comes back the next day is told by picture and word. */
const OLD_MS = 12 * 3_600_000;

/** Which ring is due, from 1; 0: none is. */
export function ringDue({ endsAt }: Pick<RunningTimer, 'endsAt'>, now: number): number {
  if (endsAt === null || now < endsAt || now - endsAt > OLD_MS) return 0;
  return Math.min(MOST_RINGS, 1 + Math.floor((now - endsAt) / EVERY_MS));
}

/** Rung or silenced already: comes through a reload. */
const keyOf = (timer: string): string => `rung.${timer}`;
export const rungSoFar = (timer: string): number => Number(keptInTab.read(keyOf(timer)) ?? 0);
export const markRung = (timer: string, times: number): void => keptInTab.write(keyOf(timer), String(times));
export const silence = (timer: string): void => markRung(timer, MOST_RINGS);
