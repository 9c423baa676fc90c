import type { Step } from './batch.ts';
import { runningBegun } from './list-timers.ts';

export interface WhipState {
  /** `ready`: the round may begin; `running`: it runs; `whipped`: this load was stopped, another may follow. */
  readonly phase: 'ready' | 'running' | 'whipped';
  readonly load: number;
  readonly round: number;
}

type Whipped = Step['whipped'][number];
type Ordered = Pick<Whipped, 'load' | 'round'>;

const byPlace = (one: Ordered, other: Ordered): number => one.load - other.load || one.round - other.round;

/** Where whipping stands: told from rounds begun and looked at, in whatever order two tablets sent them. */
export function whipStateOf(step: Step): WhipState {
  const running = runningBegun(step);
  if (running) return { phase: 'running', load: running.load, round: running.round };
  const last = lastRound(step);
  if (!last) return { phase: 'ready', load: 1, round: 1 };
  return last.goes === 'on'
    ? { phase: 'ready', load: last.load, round: last.round + 1 }
    : { phase: 'whipped', load: last.load, round: last.round };
}

export const lastRound = ({ whipped }: Step): Whipped | undefined => whipped.toSorted(byPlace).at(-1);

/** The last rounds of this load that were weighed, before the one that is looked at: what it was before. */
export const weighedBefore = ({ whipped }: Step, now: Ordered): Whipped | undefined =>
  whipped
    .filter((each) => each.load === now.load && each.round < now.round && each.cups.length > 0)
    .toSorted(byPlace)
    .at(-1);
