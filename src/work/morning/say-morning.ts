import type { Saying } from '../../contract/index.ts';
import { answerWord } from '../orders/promise-orders.ts';
import { saying } from '../saying.ts';
import { listMelts, type Melt, meltFacts } from './list-makings.ts';
import { isCovered } from './list-parcels.ts';
import { listTinsToMake, type TinsToMake } from './list-tins-to-make.ts';
import type { MorningData, OrderInTurn } from './read-morning.ts';

type Facts = Saying['parameters'];

/** The morning in one sentence: how many parcels can go, and the one thing that is most pressing after that. */
export function sayMorning(data: MorningData): Saying {
  const begin = sayBeginning(data);
  if (begin) return begin;
  const ready = data.orders.filter(isCovered).length;
  const late = data.orders.filter(
    (order) => order.view.wantedBy < data.book.today && !isCovered(order),
  ).length;
  const stuck = data.orders.filter((order) => isStuck(data, order)).length;
  const pressing = mostPressing(data);
  const isQuiet = pressing === REST && ready + late + stuck === 0;
  if (isQuiet && data.claims.length > 0) return saying('morning-claims-open', { open: data.claims.length });
  return saying('morning-says', { ready, late, stuck, ...pressing });
}

/** Not late yet, and it will be. */
const isStuck = ({ book }: MorningData, { view, served }: OrderInTurn): boolean =>
  view.wantedBy >= book.today && ['no', 'not-for-sale'].includes(answerWord(book, served));

/** An empty workshop: what has to be there before anything can be ordered. */
function sayBeginning({ book, orders, runs }: MorningData): Saying | null {
  if (orders.length > 0 || runs.length > 0 || book.batches.length > 0) return null;
  if (book.materials.size === 0) return saying('morning-first-materials');
  if (book.lots.length === 0) return saying('morning-first-count');
  if (book.formulas.size === 0) return saying('morning-first-formula');
  return book.products.size === 0 ? saying('morning-first-product') : null;
}

/** What is due today before what can wait, and of that what is due first. */
function mostPressing(data: MorningData): Facts {
  const melts = listMelts(data).filter((melt) => !melt.barred);
  const today = melts.find((melt) => melt.state !== 'ready');
  if (today) return meltNow(data, today);
  return firmFacts(data) ?? runFacts(data) ?? dueNext(data, melts) ?? buyFacts(data) ?? REST;
}

const REST: Facts = { pressing: 'nothing' };

function meltNow({ book }: MorningData, melt: Melt): Facts {
  const pressing = melt.state === 'stop' ? 'meltLate' : melt.state === 'watch' ? 'meltToday' : 'melt';
  return { pressing, item: melt.base.name, ...meltFacts(book, melt) };
}

/** Tins by the day on which they are wanted, a base by the day on which it has to be melted. */
function dueNext(data: MorningData, melts: readonly Melt[]): Facts | null {
  const due = [
    ...listTinsToMake(data)
      .filter(({ state }) => state === 'ready' || state === 'barred')
      .map((tins) => ({ day: tins.first.view.wantedBy, facts: makeFacts(tins) })),
    ...melts.map((melt) => ({ day: melt.begin, facts: meltNow(data, melt) })),
  ];
  return due.sort((one, other) => one.day.localeCompare(other.day))[0]?.facts ?? null;
}

const makeFacts = ({ product, units, barred }: TinsToMake): Facts =>
  barred
    ? { pressing: 'check', item: barred.name, revision: barred.number, product: product.name }
    : { pressing: 'make', item: product.name, units };

function firmFacts({ book }: MorningData): Facts | null {
  const lot = book.lots.find(
    (row) =>
      row.formula_kind === 'base' &&
      row.firm_from !== null &&
      row.firm_said_at === null &&
      row.status === 'quarantine' &&
      Date.parse(row.firm_from) <= Date.parse(book.now),
  );
  return lot ? { pressing: 'firm', item: lot.item_name, lot: lot.number } : null;
}

/** What waits for its release before what is being filled, and before what is held there. */
function runFacts({ runs, book }: MorningData): Facts | null {
  const turnOf = (run: (typeof runs)[number]) => (book.heldRuns.has(run.id) ? 2 : run.is_closed ? 0 : 1);
  const [run] = [...runs].sort((one, other) => turnOf(one) - turnOf(other));
  if (!run) return null;
  const { name } = JSON.parse(run.product_details) as { readonly name: string };
  const pressing = (['release', 'fill', 'held'] as const)[turnOf(run)] ?? 'fill';
  return { pressing, item: name };
}

/** What is on its way need not be bought again. */
function buyFacts({ book, needs }: MorningData): Facts | null {
  const [itemId, ...others] = [...needs.short.keys()].filter(
    (id) => book.materials.has(id) && !book.onTheirWay.has(id),
  );
  return itemId === undefined
    ? null
    : { pressing: 'buy', item: book.materials.get(itemId)?.name ?? '', others: others.length };
}
