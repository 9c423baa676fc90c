import { toText } from '../quantity/index.ts';
import { havingOf, type NetNeed } from './net-needs.ts';
import type { PromiseAnswer, PromiseSaying, PromiseStep } from './promise-question.ts';
import type { ItemTimes } from './schedule-makings.ts';
import type { WorkClock } from './work-clock.ts';

export interface BothCourses {
  readonly best: ReadonlyMap<string, ItemTimes>;
  readonly longest: ReadonlyMap<string, ItemTimes>;
}

const about = ({ item }: NetNeed) => ({ item: item.name, unit: item.unit });
const of = ({ item }: NetNeed, lot: string | null = null) => ({ itemId: item.itemId, lot });

/**
 * What has to be bought, waited for, made and released, in the order in which it begins. Where several begin at once:
 * errands before work, and parts before what is made of them.
 */
export function listSteps(
  needs: readonly NetNeed[],
  { best, longest }: BothCourses,
  nowText: string,
  clock: WorkClock,
): PromiseStep[] {
  const steps: PromiseStep[] = [];
  const makings: PromiseStep[] = [];
  for (const net of needs.toReversed()) {
    const [soon, late] = [best.get(net.item.itemId), longest.get(net.item.itemId)];
    if (soon === undefined || late === undefined) continue;
    steps.push(...stepsOfLots(net, nowText, clock.instantOf(late.ready)));
    makings.push(...stepsOfMaking(net, soon, late, clock));
  }
  steps.push(...makings);
  return steps.sort((one, other) => timeOf(one.from ?? one.to) - timeOf(other.from ?? other.to));
}

const timeOf = (instant: string | null): number =>
  instant === null ? Number.MAX_VALUE : Date.parse(instant);

function stepsOfLots(net: NetNeed, nowText: string, ready: string | null): PromiseStep[] {
  const parameters = about(net);
  const hasPassed = (instant: string) => Date.parse(instant) <= Date.parse(nowText);
  const steps: PromiseStep[] = net.setting.map(({ lot, firm }) => ({
    what: {
      code: hasPassed(firm.to) ? 'promise-step-say-firm' : 'promise-step-firm',
      parameters: { ...parameters, lot },
    },
    ...of(net, lot),
    from: firm.from,
    to: firm.to,
  }));
  if (!net.short.isZero()) {
    const amount = toText(net.short);
    steps.push({
      what: { code: 'promise-step-buy', parameters: { ...parameters, amount } },
      ...of(net),
      from: nowText,
      to: ready,
    });
  }
  if (!net.unreleased.isZero()) {
    const amount = toText(net.unreleased);
    steps.push({
      what: { code: 'promise-step-release', parameters: { ...parameters, amount } },
      ...of(net),
      from: nowText,
      to: null,
    });
  }
  return steps;
}

function stepsOfMaking(net: NetNeed, soon: ItemTimes, late: ItemTimes, clock: WorkClock): PromiseStep[] {
  if (soon.work === null || late.work === null) return [];
  const parameters = { ...about(net), amount: toText(net.toMake) };
  const make: PromiseStep = {
    what: { code: 'promise-step-make', parameters },
    ...of(net),
    from: clock.instantOf(soon.work.start),
    to: clock.instantOf(late.work.end),
  };
  if (!net.item.making?.settingHours) return [make];
  const set: PromiseStep = {
    what: { code: 'promise-step-set', parameters: about(net) },
    ...of(net),
    from: clock.instantOf(soon.ready),
    to: clock.instantOf(late.ready),
  };
  return [make, set];
}

/** Why it is so: what is here, what sets until when, what is short. */
export function listReasons(
  needs: readonly NetNeed[],
  wanted: ReadonlySet<string>,
  steps: readonly PromiseStep[],
): PromiseSaying[] {
  const onShelf = needs
    .filter(({ item }) => wanted.has(item.itemId))
    .map((net) => ({
      code: 'promise-on-shelf',
      parameters: { ...about(net), need: toText(net.need), onShelf: toText(net.onShelf) },
    }));
  const firm = steps
    .filter(({ what }) => what.code === 'promise-step-firm' || what.code === 'promise-step-set')
    .map(({ what, from, to }) => ({
      code: 'promise-firm-between',
      parameters: { item: what.parameters.item ?? null, from, to },
    }));
  const short = needs
    .filter((net) => !net.short.isZero())
    .map((net) => ({
      code: 'promise-short',
      parameters: {
        ...about(net),
        need: toText(net.need),
        have: toText(havingOf(net)),
        short: toText(net.short),
        leadDays: net.item.leadDays,
      },
    }));
  return [...onShelf, ...firm, ...short];
}

/** The answer in one sentence. */
export function sayPromise(
  answer: PromiseAnswer['answer'],
  wantedBy: string,
  earliest: PromiseAnswer['earliest'],
): PromiseSaying {
  if (earliest === null) return { code: 'promise-unknown-until-bought', parameters: { wantedBy } };
  const { from, to, dependsOnSupplier } = earliest;
  const parameters = { wantedBy, from, to, isRange: from !== to };
  if (dependsOnSupplier) return { code: 'promise-if-supplier-delivers', parameters };
  if (answer === 'yes') return { code: 'promise-can-go', parameters };
  return { code: from <= wantedBy ? 'promise-only-if-firm-early' : 'promise-cannot-go', parameters };
}
