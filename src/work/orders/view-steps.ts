import type { Saying } from '../../contract/index.ts';
import { exact, roundToStep, toText } from '../../core/quantity/index.ts';
import type { PromiseAnswer, PromiseStep } from '../../core/stock/index.ts';
import { saying } from '../saying.ts';
import { isWaiting } from './is-waiting.ts';
import { mayGo } from './may-go.ts';
import type { PromiseView } from './promise-view.ts';
import type { OrderBook } from './read-order-book.ts';
import { laterOf, type Span, sayFirm, sayWhen } from './say-when.ts';
import type { ServedLine, ServedOrder } from './serve-orders.ts';

type StepView = PromiseView['steps'][number];

/** A step on its way to the page, with the instant by which it is put in order. */
interface Timed {
  readonly step: StepView;
  readonly at: number;
}

/**
 * What has to happen, in the order of the days on which it can begin. Filling waits for the mixture and for the last
 * tin, lid and label; a mixture is made on the day on which it is filled, so it waits for them too.
 */
export function viewSteps(book: OrderBook, served: ServedOrder, answer: PromiseAnswer | null): StepView[] {
  const timed = [
    ...served.barred.map((barred) => checkStep(book, barred)),
    ...served.lines.flatMap((line) => stepsOfTins(book, line, answer)),
    ...(answer?.steps ?? [])
      .filter((step) => isAdvised(served, step))
      .flatMap((step) => viewStep(book, served, { step, answer })),
    ...served.lines
      .filter((line) => !isBarred(served, line.product.formulaId))
      .flatMap((line) => fillSteps(book, served, line, answer)),
  ];
  return timed.sort((one, other) => one.at - other.at).map(({ step }) => step);
}

const isBarred = ({ barred }: ServedOrder, formulaId: string): boolean =>
  barred.some((row) => row.formulaId === formulaId);

const MAKES: ReadonlySet<string> = new Set(['promise-step-make', 'promise-step-set']);

/**
 * Where something may not be made for sale, only tins of what may are made; a base is not melted for an order that
 * cannot go.
 */
function isAdvised(served: ServedOrder, { what, itemId }: PromiseStep): boolean {
  if (served.barred.length === 0 || !MAKES.has(what.code)) return true;
  return served.lines.some((line) => line.product.formulaId === itemId) && !isBarred(served, itemId);
}

/** What nobody knows a day for comes last. Steps of one day keep the order in which they depend on one another. */
function timedAt({ now }: OrderBook, { from, to }: Span, step: StepView): Timed {
  if (from === null || to === null) return { step, at: Number.MAX_VALUE };
  return { step, at: Math.max(Date.parse(now), Date.parse(from)) };
}

const go = (code: string, to: string): StepView['action'] => ({ words: saying(code), to });
const atOnce = ({ now }: OrderBook): Span => ({ from: now, to: now });

const checkStep = (book: OrderBook, { formulaId, name, number }: ServedOrder['barred'][number]): Timed =>
  timedAt(book, atOnce(book), {
    what: saying('order-step-check', { item: name, number }),
    when: null,
    action: go('order-act-check', `/formulas/${formulaId}/check`),
  });

/** Other tins instead of stopped ones, a release, a bowl to be filled. */
function stepsOfTins(book: OrderBook, line: ServedLine, answer: PromiseAnswer | null): Timed[] {
  const step = (code: string, units: number, when: Saying | null, action: StepView['action'], span: Span) =>
    units === 0
      ? []
      : [timedAt(book, span, { what: saying(code, { units, product: line.product.name }), when, action })];
  const packed = packagingSpan(book, line, answer);
  const now = atOnce(book);
  return [
    ...step('order-step-keep-others', line.keptInVain, null, null, now),
    ...step('order-step-release', line.waiting, null, toRelease(book, line), now),
    ...step('order-step-fill', line.inBowl, sayWhen(book, packed), toBowl(book, line), packed),
  ];
}

function toRelease(book: OrderBook, { product }: ServedLine): StepView['action'] {
  const waiting = book.lots.find((lot) => lot.item_id === product.id && isWaiting(book, lot));
  return waiting?.filling_run_id ? go('order-act-release', `/filling/${waiting.filling_run_id}`) : null;
}

function toBowl(book: OrderBook, { product }: ServedLine): StepView['action'] {
  const bowl = book.lots.find((lot) => lot.item_id === product.formulaId && mayGo(book, lot));
  if (bowl?.batch_id) return go('order-act-fill', `/making/${bowl.batch_id}/fill`);
  const batch = book.batches.find((row) => row.formula_id === product.formulaId && row.purpose === 'sale');
  return batch ? go('order-act-go-on', `/making/${batch.id}`) : null;
}

/** When the last tin, lid and label for a product is at hand. */
function packagingSpan(book: OrderBook, { product }: ServedLine, answer: PromiseAnswer | null): Span {
  const { tinId, lidId, labelId } = product.details;
  return [tinId, lidId, labelId].reduce(
    (span: Span, id) => laterOf(span, (id !== null && answer?.atHand.get(id)) || atOnce(book)),
    atOnce(book),
  );
}

/** When a mixture can be made and filled, which is one day: with its parts, and the packaging of all its tins. */
function mixtureSpan(
  book: OrderBook,
  { lines }: ServedOrder,
  formulaId: string,
  answer: PromiseAnswer,
): Span {
  return lines
    .filter((line) => line.product.formulaId === formulaId && line.toMake > 0)
    .reduce(
      (span: Span, line) => laterOf(span, packagingSpan(book, line, answer)),
      answer.atHand.get(formulaId) ?? atOnce(book),
    );
}

const isMade = (served: ServedOrder, { product, toMake }: ServedLine): boolean =>
  toMake > 0 && served.nets.some((net) => net.item.itemId === product.formulaId && !net.toMake.isZero());

function fillSteps(
  book: OrderBook,
  served: ServedOrder,
  line: ServedLine,
  answer: PromiseAnswer | null,
): Timed[] {
  if (answer === null || !isMade(served, line)) return [];
  const span = mixtureSpan(book, served, line.product.formulaId, answer);
  const what = saying('order-step-fill-same-day', { units: line.toMake, product: line.product.name });
  return [timedAt(book, span, { what, when: sayWhen(book, span), action: null })];
}

/** A hundredth of a gram is finer than anybody buys or weighs into a melt (common practice, no source). */
const SHOWN_GRAMS = '0.01';
export const shownAmount = (quantity: string, unit: string): string =>
  unit === 'g' ? toText(roundToStep(exact(quantity), SHOWN_GRAMS, 'up')) : quantity;

interface OfAnswer {
  readonly step: PromiseStep;
  readonly answer: PromiseAnswer | null;
}

function viewStep(book: OrderBook, served: ServedOrder, { step, answer }: OfAnswer): Timed[] {
  const { amount, unit } = step.what.parameters;
  const parameters =
    typeof amount === 'string' && typeof unit === 'string'
      ? { ...step.what.parameters, amount: shownAmount(amount, unit) }
      : { ...step.what.parameters };
  switch (step.what.code) {
    case 'promise-step-make':
      return answer === null ? [] : [makeStep(book, served, { step, answer }, parameters)];
    case 'promise-step-buy':
      return [buyStep(book, step, parameters)];
    case 'promise-step-set':
      return [setStep(book, step, parameters)];
    default:
      return [firmStep(book, step, parameters)];
  }
}

function makeStep(
  book: OrderBook,
  served: ServedOrder,
  { step, answer }: OfAnswer & { readonly answer: PromiseAnswer },
  parameters: Saying['parameters'],
): Timed {
  const { itemId } = step;
  const own = served.lines.filter((line) => line.product.formulaId === itemId && line.toMake > 0);
  const [first] = own;
  const span = first ? mixtureSpan(book, served, itemId, answer) : step;
  const to =
    first && own.length === 1
      ? `/making/new?product=${first.product.id}&units=${first.toMake}`
      : `/making/new?formula=${itemId}&grams=${parameters.amount}`;
  const what = saying(step.what.code, parameters);
  return timedAt(book, span, { what, when: sayWhen(book, span), action: go('order-act-plan', to) });
}

/** What is on its way is waited for. */
function buyStep(book: OrderBook, step: PromiseStep, parameters: Saying['parameters']): Timed {
  const isOnItsWay = book.onTheirWay.has(step.itemId);
  const { to } = step;
  const here = to === null ? saying('order-when-not-said') : sayWhen(book, { from: to, to });
  return timedAt(book, atOnce(book), {
    what: saying(isOnItsWay ? 'order-step-wait' : step.what.code, parameters),
    when:
      to === null ? here : saying(isOnItsWay ? 'order-when-expected' : 'order-when-ordered', here.parameters),
    action: go('order-act-buy', '/#buy'),
  });
}

function setStep(book: OrderBook, step: PromiseStep, parameters: Saying['parameters']): Timed {
  const hours = book.formulas.get(step.itemId)?.details?.settingHours;
  const { least = 0, most = 0 } = hours ?? {};
  const what = saying('order-step-set', {
    ...parameters,
    least,
    most,
    isRange: least === most ? 'no' : 'yes',
  });
  // Hours from when it was made are known; from a day that waits for goods they are not.
  return timedAt(book, step, { what, when: sayFirm(book, step), action: null });
}

/** A base that sets, or that is still being made and sets then. */
function firmStep(book: OrderBook, step: PromiseStep, parameters: Saying['parameters']): Timed {
  const batch = book.batches.find((row) => row.number === step.lot);
  const lot = book.lots.find((row) => row.number === step.lot);
  const [code, action] = batch
    ? ['order-step-finish', go('order-act-go-on', `/making/${batch.id}`)]
    : [step.what.code, lot ? go('order-act-firm', `/shelf/lots/${lot.id}`) : null];
  const what = saying(code, { ...parameters, ...(batch && { number: batch.number }) });
  return timedAt(book, step, { what, when: sayFirm(book, step), action });
}
