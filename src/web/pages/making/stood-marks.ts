import { type Kept, kept } from '../../api/kept.ts';
import type { RunningTimer } from './list-timers.ts';

const keyOf = (timer: string): string => `stood.${timer}`;

/** When the machine was stopped to look, by this tablet: it comes through a reload, and its timer runs and rings no more. */
export function readStood({ key }: Pick<RunningTimer, 'key'>, store: Kept = kept): number | undefined {
  const at = Number(store.read(keyOf(key)) ?? '');
  return at > 0 ? at : undefined;
}

export const markStood = ({ key }: Pick<RunningTimer, 'key'>, at: number | null, store: Kept = kept): void =>
  store.write(keyOf(key), at === null ? null : String(at));

export const stillRunning = <Timer extends Pick<RunningTimer, 'key'>>(
  timers: readonly Timer[],
  store: Kept = kept,
): Timer[] => timers.filter((timer) => readStood(timer, store) === undefined);
