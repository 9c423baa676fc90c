import { done, type Result } from '../problem.ts';
import { toText } from '../quantity/index.ts';
import { havingOf, type NetNeed, netNeeds, sortByMaking } from './net-needs.ts';
import type { PromiseAnswer, PromiseItem, PromiseQuestion, PromiseShort } from './promise-question.ts';
import { type BothCourses, listReasons, listSteps, sayPromise } from './promise-sayings.ts';
import { scheduleMakings } from './schedule-makings.ts';
import { type Minutes, WorkClock } from './work-clock.ts';

/** A lot may run out before its day of use; netting again on the days found settles within a few rounds. */
const MOST_ROUNDS = 4;

interface Outlook extends BothCourses {
  readonly needs: readonly NetNeed[];
}

/** The last day on which each item is used in the longest course: that day decides which lots are past their date. */
function findDaysOfUse(
  { needs, longest }: Outlook,
  wanted: ReadonlySet<string>,
  now: Minutes,
  clock: WorkClock,
): Map<string, string> {
  const dates = new Map<string, string>();
  const note = (itemId: string, at: Minutes | undefined) => {
    if (at === undefined || !Number.isFinite(at)) return;
    const date = clock.leavesOn(at, now);
    if (date > (dates.get(itemId) ?? '')) dates.set(itemId, date);
  };
  for (const { item } of needs) {
    const times = longest.get(item.itemId);
    if (wanted.has(item.itemId)) note(item.itemId, times?.ready);
    if (times?.work) for (const part of item.making?.parts ?? []) note(part.itemId, times.work.start);
  }
  return dates;
}

function lookAhead(
  question: PromiseQuestion,
  sorted: readonly PromiseItem[],
  wanted: ReadonlySet<string>,
  now: Minutes,
  clock: WorkClock,
): Result<Outlook> {
  const today = clock.dateOf(now);
  let dates = new Map<string, string>();
  for (let round = 1; ; round++) {
    const needs = netNeeds(question, sorted, (itemId) => dates.get(itemId) ?? today);
    if (!needs.ok) return needs;
    const outlook = {
      needs: needs.value,
      best: scheduleMakings(needs.value, 'best', now, clock),
      longest: scheduleMakings(needs.value, 'longest', now, clock),
    };
    const found = findDaysOfUse(outlook, wanted, now, clock);
    const isSettled = [...found].every(([itemId, date]) => (dates.get(itemId) ?? today) === date);
    if (isSettled || round === MOST_ROUNDS) return done(outlook);
    dates = found;
  }
}

const shortOf = (net: NetNeed): PromiseShort => ({
  itemId: net.item.itemId,
  name: net.item.name,
  unit: net.item.unit,
  need: toText(net.need),
  have: toText(havingOf(net)),
  short: toText(net.short),
  leadDays: net.item.leadDays,
});

function atHandOf(itemId: string, { best, longest }: BothCourses, clock: WorkClock) {
  const instantIn = (course: BothCourses['best']) => clock.instantOf(course.get(itemId)?.ready ?? Infinity);
  return { from: instantIn(best), to: instantIn(longest) };
}

function judge(from: string, to: string | null, isShort: boolean, wantedBy: string): PromiseAnswer['answer'] {
  if (from > wantedBy) return 'no';
  if (to === null) return 'not-known';
  if (to > wantedBy) return 'no';
  return isShort ? 'if-bought' : 'yes';
}

/**
 * Answers an order: can it go out by the day it is wanted, when at the earliest, what is short, what is to be done.
 *
 * Finished tins first, then what waits for release, then bases that are set or still set, then what can be made. The
 * setting time is a range: the answer is judged on the longest, both ends are shown. What is short has to be bought;
 * with lead days known the dates count them and say so, without them there is no date. Common practice, no source.
 */
export function promiseDate(question: PromiseQuestion): Result<PromiseAnswer> {
  const sorted = sortByMaking(question);
  if (!sorted.ok) return sorted;
  const clock = new WorkClock(question.timeZone, question.workday);
  const now = clock.minutesOf(question.now);
  const wanted = new Set(question.needs.map(({ itemId }) => itemId));
  const outlook = lookAhead(question, sorted.value, wanted, now, clock);
  if (!outlook.ok) return outlook;
  const { needs, best, longest } = outlook.value;
  const readyIn = (course: BothCourses['best']) =>
    Math.max(now, ...[...wanted].map((itemId) => course.get(itemId)?.ready ?? now));
  const from = clock.leavesOn(readyIn(best), now);
  const last = readyIn(longest);
  const to = Number.isFinite(last) ? clock.leavesOn(last, now) : null;
  const short = needs.filter((net) => !net.short.isZero());
  const answer = judge(from, to, short.length > 0, question.wantedBy);
  const earliest = to === null ? null : { from, to, dependsOnSupplier: short.length > 0 };
  const steps = listSteps(needs, { best, longest }, question.now, clock);
  return done({
    canGoOutBy: answer === 'yes',
    answer,
    sentence: sayPromise(answer, question.wantedBy, earliest),
    earliest,
    shortOf: short.map(shortOf),
    steps,
    atHand: new Map(
      needs.map(({ item: { itemId } }) => [itemId, atHandOf(itemId, { best, longest }, clock)]),
    ),
    reasons: listReasons(needs, wanted, steps),
  });
}
