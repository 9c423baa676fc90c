import type { NetNeed } from './net-needs.ts';
import type { Minutes, WorkClock } from './work-clock.ts';

/** `best`: everything sets as fast as it may. `longest`: as slowly. */
export type Course = 'best' | 'longest';

/** When one item is at hand; for what is made also when hands work on it. */
export interface ItemTimes {
  readonly ready: Minutes;
  readonly work: { readonly start: Minutes; readonly end: Minutes } | null;
}

interface Job {
  readonly net: NetNeed;
  /** When its parts are at hand. */
  readonly from: Minutes;
}

const settingHours = ({ item }: NetNeed, course: Course): number => {
  const hours = item.making?.settingHours;
  return (course === 'best' ? hours?.least : hours?.most) ?? 0;
};

const effortOf = ({ item, toMake }: NetNeed): number =>
  (item.making?.minutes ?? 0) + (item.making?.minutesForEach ?? 0) * toMake.toNumber();

/** When that part of an item is at hand that is not made: from lots, or bought. */
function arrivalOf(
  { item, short, setting }: NetNeed,
  course: Course,
  now: Minutes,
  clock: WorkClock,
): Minutes {
  const firm = setting.map((lot) => clock.minutesOf(course === 'best' ? lot.firm.from : lot.firm.to));
  if (short.isZero()) return Math.max(now, ...firm);
  const unknown = course === 'best' ? now : Infinity;
  const bought = item.leadDays === null ? unknown : clock.morningAfter(now, item.leadDays);
  return Math.max(now, ...firm, bought);
}

/** What waits longest afterwards is started first, where two could start at once. */
const compareJobs = (course: Course) => (one: Job, other: Job) =>
  one.from === other.from
    ? settingHours(other.net, course) - settingHours(one.net, course)
    : one.from < other.from
      ? -1
      : 1;

/**
 * Lays the makings out in time: each starts when its parts are at hand and the one pair of hands is free, within the
 * working day, and what it makes is ready once it has set. A rule of priority (earliest ready first), not an optimum.
 * In the best course a part without known lead days is taken as here at once, in the longest as never here.
 */
export function scheduleMakings(
  needs: readonly NetNeed[],
  course: Course,
  now: Minutes,
  clock: WorkClock,
): ReadonlyMap<string, ItemTimes> {
  const times = new Map<string, ItemTimes>();
  const waiting = new Set(needs.filter(({ toMake }) => !toMake.isZero()));
  for (const net of needs) {
    if (!waiting.has(net))
      times.set(net.item.itemId, { ready: arrivalOf(net, course, now, clock), work: null });
  }
  let handsFree = now;
  while (waiting.size > 0) {
    const [job] = [...waiting].flatMap((net) => jobOf(net, times, now)).sort(compareJobs(course));
    // The items were sorted by making: without a loop something can always start.
    if (job === undefined) throw new Error('makings wait for one another');
    const work = clock.work(Math.max(job.from, handsFree), effortOf(job.net));
    if (Number.isFinite(work.end)) handsFree = work.end;
    const set = work.end + Math.ceil(settingHours(job.net, course) * 60);
    const ready = Math.max(set, arrivalOf(job.net, course, now, clock));
    times.set(job.net.item.itemId, { ready, work });
    waiting.delete(job.net);
  }
  return times;
}

function jobOf(net: NetNeed, times: ReadonlyMap<string, ItemTimes>, now: Minutes): Job[] {
  const parts = (net.item.making?.parts ?? []).map(({ itemId }) => times.get(itemId)?.ready);
  const known = parts.filter((ready) => ready !== undefined);
  return known.length < parts.length ? [] : [{ net, from: Math.max(now, ...known) }];
}
