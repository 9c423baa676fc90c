import { done, problem, type Result, refused } from '../problem.ts';
import { type Exact, exact, sumOf, ZERO } from '../quantity/index.ts';
import { chooseFirstExpiry, type Issue } from './choose-first-expiry.ts';
import type { PromiseItem, PromiseLot, PromiseQuestion } from './promise-question.ts';

/** Where the need of one item is met from: lots that are ready, lots that still set, a making, or nowhere. */
export interface NetNeed {
  readonly item: PromiseItem;
  readonly need: Exact;
  /** Released and within its date, whether needed or not. */
  readonly onShelf: Exact;
  /** Taken of released lots. */
  readonly ready: Exact;
  /** Of tins that wait for their release. */
  readonly unreleased: Exact;
  /** Of lots that still set, the soonest firm first. */
  readonly setting: readonly (Issue & { readonly firm: { readonly from: string; readonly to: string } })[];
  readonly toMake: Exact;
  /** Neither here nor to be made. */
  readonly short: Exact;
}

/** Items in an order in which each comes after everything that takes it; refuses loops and items that are not listed. */
export function sortByMaking({ needs, items }: PromiseQuestion): Result<PromiseItem[]> {
  const byId = new Map(items.map((item) => [item.itemId, item]));
  const finished: PromiseItem[] = [];
  const visit = (itemId: string, path: readonly PromiseItem[]): Result<null> => {
    const item = byId.get(itemId);
    if (item === undefined) return refused(problem('thing-not-found', 'itemId', { found: itemId }));
    if (finished.includes(item)) return done(null);
    if (path.includes(item)) {
      const loop = [...path.slice(path.indexOf(item)), item].map(({ name }) => name).join(' > ');
      return refused(problem('formula-contains-itself', item.name, { found: loop }));
    }
    for (const part of item.making?.parts ?? []) {
      const visited = visit(part.itemId, [...path, item]);
      if (!visited.ok) return visited;
    }
    finished.push(item);
    return done(null);
  };
  for (const { itemId } of needs) {
    const visited = visit(itemId, []);
    if (!visited.ok) return visited;
  }
  return done(finished.reverse());
}

const isReleased = (lot: PromiseLot): boolean => lot.status === 'released' && lot.firm === null;
const isUnreleased = (lot: PromiseLot): boolean => lot.status === 'quarantine' && lot.awaitsRelease;
const isSetting = (lot: PromiseLot): boolean =>
  lot.firm !== null && (lot.status === 'quarantine' || lot.status === 'released');
const asReleased = (lot: PromiseLot): PromiseLot => ({ ...lot, status: 'released' });

function meetNeed(item: PromiseItem, need: Exact, useDate: string): Result<NetNeed> {
  const released = item.lots.filter(isReleased);
  const ready = chooseFirstExpiry(released, need, useDate);
  if (!ready.ok) return ready;
  const passedOver = new Set(ready.value.passedOver.map(({ lot }) => lot));
  const unreleasedLots = item.lots.filter(isUnreleased).map(asReleased);
  const unreleased = chooseFirstExpiry(unreleasedLots, ready.value.short, useDate);
  if (!unreleased.ok) return unreleased;
  const setting: NetNeed['setting'][number][] = [];
  let open = unreleased.value.short;
  const bySoonest = item.lots
    .filter(isSetting)
    .sort((one, other) => Date.parse(one.firm?.to ?? '') - Date.parse(other.firm?.to ?? ''));
  for (const lot of bySoonest) {
    const chosen = chooseFirstExpiry([asReleased(lot)], open, useDate);
    if (!chosen.ok) return chosen;
    open = chosen.value.short;
    if (lot.firm) for (const issue of chosen.value.issue) setting.push({ ...issue, firm: lot.firm });
  }
  return done({
    item,
    need,
    onShelf: sumOf(released.filter(({ lot }) => !passedOver.has(lot)).map(({ quantity }) => quantity)),
    ready: need.minus(ready.value.short),
    unreleased: ready.value.short.minus(unreleased.value.short),
    setting,
    toMake: item.making ? open : ZERO,
    short: item.making ? ZERO : open,
  });
}

/**
 * Nets the needs, level by level (low-level coding: an item is netted after everything that takes it): what is here
 * first, first-expired-first-out by the day of use, then what still sets, then what has to be made of its parts.
 */
export function netNeeds(
  question: PromiseQuestion,
  sorted: readonly PromiseItem[],
  dayOfUse: (itemId: string) => string,
): Result<NetNeed[]> {
  const gross = new Map<string, Exact>();
  const ask = (itemId: string, more: Exact) => gross.set(itemId, (gross.get(itemId) ?? ZERO).plus(more));
  for (const { itemId, quantity } of question.needs) ask(itemId, exact(quantity));
  const netted: NetNeed[] = [];
  for (const item of sorted) {
    const net = meetNeed(item, gross.get(item.itemId) ?? ZERO, dayOfUse(item.itemId));
    if (!net.ok) return net;
    netted.push(net.value);
    if (net.value.toMake.isZero()) continue;
    for (const { itemId, amount, extra } of item.making?.parts ?? []) {
      ask(itemId, net.value.toMake.times(amount).plus(extra ?? 0));
    }
  }
  return done(netted);
}

export const havingOf = ({ ready, unreleased, setting }: NetNeed): Exact =>
  sumOf([ready, unreleased, ...setting.map(({ quantity }) => quantity)]);
