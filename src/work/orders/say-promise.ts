import type { Saying } from '../../contract/index.ts';
import { exact, roundToStep, toText } from '../../core/quantity/index.ts';
import type { PromiseAnswer, PromiseShort, PromiseStep } from '../../core/stock/index.ts';
import { saying } from '../saying.ts';
import { nearDay } from './near-day.ts';
import type { OrderBook } from './read-order-book.ts';
import { sayMomentOf } from './say-moment.ts';
import type { ServedLine, ServedOrder } from './serve-orders.ts';
import { viewGoods } from './view-goods.ts';

type Parameters = Saying['parameters'];

const total = (lines: readonly ServedLine[], pick: (line: ServedLine) => number): number =>
  lines.reduce((sum, line) => sum + pick(line), 0);

/** The answer in the maker's words: what decides first, then the figures. */
export function sayPromise(
  book: OrderBook,
  served: ServedOrder,
  answer: PromiseAnswer | null,
  orderBy: string | null,
): Saying {
  const day = (name: string, date: string) => ({ [name]: date, [`${name}Near`]: nearDay(date, book.today) });
  const wanted = day('wantedBy', served.order.wantedBy);
  const [unknown] = served.unknown;
  if (unknown !== undefined)
    return saying('order-not-known', { item: unknown, others: served.unknown.length - 1 });
  if (served.barred.length > 0) return sayBarred(served);
  if (answer === null) return sayFinished(book, served, wanted);
  if (answer.shortOf.length > 0) return sayShort(book, answer, wanted, orderBy);
  const { from, to } = answer.earliest ?? { from: book.today, to: book.today };
  const firm = findFirm(book, answer.steps);
  const facts = { ...wanted, ...day('day', to), ...countTins(served), ...firm?.parameters };
  if (answer.answer !== 'yes') return sayTooLate(book, served, { from, facts, isSetting: firm !== null });
  return saying(firm?.code ?? 'order-goes-when-made', facts);
}

/** What may not be made for sale is no promise, whatever is at hand for it; finished tins are. */
function sayBarred({ lines, barred }: ServedOrder): Saying {
  const [first] = barred;
  return saying('order-may-not-be-made', {
    units: total(lines, (line) => line.toMake),
    item: first?.name ?? '',
    number: first?.number ?? 0,
    others: barred.length - 1,
    ready: total(lines, (line) => line.kept + line.free),
  });
}

/** All of it stands in tins: it can go, though some may wait for a release. */
function sayFinished({ today }: OrderBook, { lines, order }: ServedOrder, wanted: Parameters): Saying {
  const need = total(lines, (line) => line.open);
  const waiting = total(lines, (line) => line.waiting);
  const have = total(lines, (line) => line.kept + line.onShelf);
  const kinds = lines.filter((line) => line.open > 0).length;
  const isLate = order.wantedBy < today ? 'yes' : 'no';
  return waiting > 0
    ? saying('order-goes-when-released', { ...wanted, isLate, need, waiting })
    : saying('order-goes-from-shelf', { ...wanted, isLate, need, have, kinds });
}

/** Empty tins: as many as are needed, and as many as stand there. */
function countTins({ lines, question }: ServedOrder): {
  readonly need: number;
  readonly have: number;
  readonly kinds: number;
} {
  const tinIds = new Set(lines.map((line) => line.product.details.tinId));
  const asked = question?.needs.filter(({ itemId }) => tinIds.has(itemId)) ?? [];
  const need = asked.reduce((sum, { quantity }) => sum + Number(quantity), 0);
  const there = question?.items.filter(({ itemId }) => asked.some((row) => row.itemId === itemId)) ?? [];
  const have = there.flatMap(({ lots }) => lots).reduce((sum, lot) => sum + Number(lot.quantity), 0);
  return { need, have, kinds: asked.length };
}

interface Late {
  readonly from: string;
  readonly facts: Parameters;
  readonly isSetting: boolean;
}

function sayTooLate({ today }: OrderBook, { order }: ServedOrder, { from, facts, isSetting }: Late): Saying {
  if (!isSetting) return saying('order-goes-late', facts);
  if (from <= order.wantedBy) return saying('order-goes-if-firm-soon', facts);
  return saying(order.wantedBy < today ? 'order-goes-late-when-firm' : 'order-sets-too-long', facts);
}

const FIRM_SAYINGS: Readonly<Record<string, string>> = {
  'promise-step-say-firm': 'order-goes-when-said-firm',
  'promise-step-firm': 'order-goes-when-firm',
  'promise-step-set': 'order-goes-when-melted',
};

/** What sets longest decides; both ends of its range are said. */
function findFirm(book: OrderBook, steps: readonly PromiseStep[]) {
  const isBeingMade = (lot: unknown) => book.batches.some((batch) => batch.number === lot);
  const last = steps
    .filter(({ what }) => what.code in FIRM_SAYINGS)
    .filter(({ what }) => what.code !== 'promise-step-say-firm' || !isBeingMade(what.parameters.lot))
    .sort((one, other) => Date.parse(other.to ?? '') - Date.parse(one.to ?? ''))[0];
  if (!last?.from || !last.to) return null;
  const isMade = last.what.code === 'promise-step-set';
  return {
    code: FIRM_SAYINGS[last.what.code] ?? '',
    parameters: {
      item: last.what.parameters.item ?? '',
      mustMelt: isMade ? 'yes' : 'no',
      ...sayMomentOf(book, 'from', last.from),
      ...sayMomentOf(book, 'to', last.to),
    },
  };
}

/** The longest of what is still to be bought: the day comes from it, whichever is named. */
const longestWait = (shortOf: readonly PromiseShort[]): number =>
  Math.max(...shortOf.map(({ leadDays }) => leadDays ?? 0));

/** Of which the larger share is missing, then the larger count. Compared by multiplying: nothing is needed of nought. */
function byGap(one: PromiseShort, other: PromiseShort): number {
  const share = exact(other.short).times(one.need).comparedTo(exact(one.short).times(other.need));
  return share === 0 ? exact(other.short).comparedTo(one.short) : share;
}

/**
 * What still has to be ordered comes first, and of that what nobody says a delivery time for: it keeps the day open.
 * Else what lacks most.
 */
function sayShort(
  book: OrderBook,
  answer: PromiseAnswer,
  wanted: Parameters,
  orderBy: string | null,
): Saying {
  const isOpen = ({ leadDays }: PromiseShort) => leadDays === null;
  const isToOrder = ({ itemId }: PromiseShort) => orderBy !== null && !book.onTheirWay.has(itemId);
  const [first] = [...answer.shortOf].sort(
    (one, other) =>
      Number(isToOrder(other)) - Number(isToOrder(one)) ||
      Number(isOpen(other)) - Number(isOpen(one)) ||
      byGap(one, other),
  );
  const facts = {
    ...wanted,
    item: first?.name ?? '',
    unit: first?.unit ?? 'g',
    amount: first ? buyable(first) : '',
    others: answer.shortOf.length - 1,
  };
  const goods = viewGoods(book.onTheirWay.get(first?.itemId ?? ''));
  if (goods) return sayOnItsWay(book, answer, facts, goods);
  if (answer.earliest === null || first?.leadDays === undefined || first.leadDays === null)
    return saying('order-short', { ...facts, isKnown: answer.answer === 'no' ? 'yes' : 'no' });
  const { from, to } = answer.earliest;
  return saying(orderBy === null ? 'order-short-until-bought' : 'order-goes-if-ordered', {
    ...facts,
    days: longestWait(answer.shortOf.filter(({ itemId }) => !book.onTheirWay.has(itemId))),
    day: from,
    dayNear: nearDay(from, book.today),
    isRange: from === to ? 'no' : 'yes',
    last: to,
    lastNear: nearDay(to, book.today),
    ...(orderBy !== null && { orderBy, orderByNear: nearDay(orderBy, book.today) }),
  });
}

/** Nobody promises what a supplier has not sent yet: the day is the one that was named, or none. */
function sayOnItsWay(
  { today }: OrderBook,
  { earliest }: PromiseAnswer,
  facts: Parameters,
  { orderedOn, supplier, expectedOn }: NonNullable<ReturnType<typeof viewGoods>>,
): Saying {
  const day = earliest?.from ?? today;
  const expected = expectedOn ?? today;
  return saying('order-short-on-its-way', {
    ...facts,
    orderedOn,
    supplier,
    hasSupplier: supplier === '' ? 'no' : 'yes',
    when: expectedOn === null ? 'none' : expectedOn < today ? 'past' : 'named',
    expectedOn: expected,
    expectedOnNear: nearDay(expected, today),
    // Where the order can go the same day, the day is not said twice.
    hasDay: earliest === null || day === expectedOn ? 'no' : 'yes',
    day,
    dayNear: nearDay(day, today),
  });
}

/** Nobody buys finer than a tenth of a gram (common practice, no source). */
const buyable = ({ short, unit }: PromiseShort): string =>
  unit === 'g' ? toText(roundToStep(exact(short), '0.1', 'up')) : short;
