import type { z } from 'zod';
import type { orders } from '../../contract/index.ts';
import { exact, roundToStep, toText } from '../../core/quantity/index.ts';
import {
  type PromiseAnswer,
  type PromiseShort,
  type PromiseStep,
  promiseDate,
} from '../../core/stock/index.ts';
import { saying } from '../saying.ts';
import type { OrderBook } from './read-order-book.ts';
import { sayPromise } from './say-promise.ts';
import { type OrderToServe, type ServedLine, type ServedOrder, serveOrders } from './serve-orders.ts';
import { viewGoods } from './view-goods.ts';

export type PromiseView = z.output<typeof orders.promise>;

/** The answer to each order, the earlier promised served first: by the day wanted, then by number. */
export function promiseOrders(book: OrderBook, asked: readonly OrderToServe[]): Map<string, PromiseView> {
  const inTurn = [...asked].sort(
    (one, other) => one.wantedBy.localeCompare(other.wantedBy) || one.number - other.number,
  );
  return new Map(serveOrders(book, inTurn).map((served) => [served.order.id, viewPromise(book, served)]));
}

export function viewPromise(book: OrderBook, served: ServedOrder): PromiseView {
  const sentenceOf = (answer: PromiseAnswer | null) => sayPromise(book, served, answer);
  const steps = stepsOfTins(book, served.lines);
  if (served.unknown.length > 0)
    return { answer: 'not-known', sentence: sentenceOf(null), earliest: null, short: [], steps };
  if (served.question === null) {
    return {
      answer: book.today <= served.order.wantedBy ? 'yes' : 'no',
      sentence: sentenceOf(null),
      earliest: { from: book.today, to: book.today },
      short: [],
      steps,
    };
  }
  const result = promiseDate(served.question);
  // The needs were netted from this very question: that it cannot be answered would be our own mistake.
  if (!result.ok) throw new Error(`no promise: ${JSON.stringify(result.problems)}`);
  const answer = result.value;
  return {
    answer: answer.answer,
    sentence: sentenceOf(answer),
    earliest: earliestOf(answer),
    short: answer.shortOf.map((short) => viewShort(book, short)),
    steps: [...steps, ...answer.steps.map((step) => viewStep(book, step)), ...stepsOfMaking(served, answer)],
  };
}

/** Not before something is bought: then no day is promised, though the sentence counts the delivery. */
function earliestOf({ earliest }: PromiseAnswer): PromiseView['earliest'] {
  if (earliest === null || earliest.dependsOnSupplier) return null;
  return { from: earliest.from, to: earliest.to };
}

/** A hundredth of a gram is finer than anybody buys or weighs into a melt (common practice, no source). */
const SHOWN_GRAMS = '0.01';
const shown = (quantity: string, unit: string): string =>
  unit === 'g' ? toText(roundToStep(exact(quantity), SHOWN_GRAMS, 'up')) : quantity;

function viewShort({ formulas, onTheirWay }: OrderBook, short: PromiseShort): PromiseView['short'][number] {
  const need = shown(short.need, short.unit);
  return {
    itemKind: formulas.has(short.itemId) ? 'formula' : 'material',
    itemId: short.itemId,
    name: short.name,
    need,
    have: short.have,
    short: toText(exact(need).minus(short.have)),
    unit: short.unit,
    onItsWay: viewGoods(onTheirWay.get(short.itemId)),
  };
}

/** What comes before everything else: other tins instead of stopped ones, a release, a bowl to be filled. */
function stepsOfTins({ now }: OrderBook, lines: readonly ServedLine[]): PromiseView['steps'] {
  const step = (code: string, units: number, line: ServedLine) =>
    units === 0 ? [] : [{ what: saying(code, { units, product: line.product.name }), from: now, to: null }];
  return lines.flatMap((line) => [
    ...step('order-step-keep-others', line.keptInVain, line),
    ...step('order-step-release', line.waiting, line),
    ...step('order-step-fill', line.inBowl, line),
  ]);
}

/** A base that is still being made has to be finished first, and then it sets; what is on its way is waited for. */
function viewStep(book: OrderBook, { what, from, to }: PromiseStep): PromiseView['steps'][number] {
  const { item = '', lot = '', amount, unit } = what.parameters;
  const isInTheMaking = book.batches.some((batch) => batch.number === lot);
  if (isInTheMaking) return { what: saying('order-step-finish', { item, number: lot }), from, to };
  const { itemId, ...facts } = what.parameters;
  const parameters =
    typeof amount === 'string' && typeof unit === 'string'
      ? { ...facts, amount: shown(amount, unit) }
      : { ...facts };
  const isOnItsWay = what.code === 'promise-step-buy' && book.onTheirWay.has(String(itemId));
  return { what: saying(isOnItsWay ? 'order-step-wait' : what.code, parameters), from, to };
}

/** Filling goes with making, on the same day. */
function stepsOfMaking({ lines }: ServedOrder, { steps }: PromiseAnswer): PromiseView['steps'] {
  const lastMade = steps.findLast((step) => step.what.code === 'promise-step-make');
  return lines
    .filter((line) => line.toMake > 0)
    .map((line) => ({
      what: saying('order-step-fill-same-day', { units: line.toMake, product: line.product.name }),
      from: lastMade?.from ?? null,
      to: lastMade?.to ?? null,
    }));
}
