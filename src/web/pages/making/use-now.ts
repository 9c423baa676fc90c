import { useSyncExternalStore } from 'react';
import { workshopNow } from '../../away/clock.ts';

const SECOND = 1000;
const WAKES = ['visibilitychange', 'focus', 'pageshow'] as const;

let now = workshopNow();
let ticking: ReturnType<typeof setInterval> | undefined;
const watchers = new Set<() => void>();

function tick(): void {
  now = workshopNow();
  for (const tell of watchers) tell();
}

/** One clock for every timer on the page; a tablet that wakes is told the time at once. */
function watch(onChange: () => void): () => void {
  watchers.add(onChange);
  if (watchers.size === 1) {
    now = workshopNow();
    ticking = setInterval(tick, SECOND / 2);
    for (const wake of WAKES) addEventListener(wake, tick);
    document.addEventListener('visibilitychange', tick);
  }
  return () => {
    watchers.delete(onChange);
    if (watchers.size > 0) return;
    clearInterval(ticking);
    for (const wake of WAKES) removeEventListener(wake, tick);
    document.removeEventListener('visibilitychange', tick);
  };
}

/** Milliseconds since 1970 by the workshop's clock, anew every half second. */
export const useNow = (): number => useSyncExternalStore(watch, () => now);
