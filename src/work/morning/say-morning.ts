import type { Saying } from '../../contract/index.ts';
import { localDate } from '../local-date.ts';
import { nearDay } from '../orders/near-day.ts';
import { saying } from '../saying.ts';
import { listMelts } from './list-makings.ts';
import { isCovered } from './list-parcels.ts';
import { listTinsToMake } from './list-tins-to-make.ts';
import type { MorningData } from './read-morning.ts';

type Facts = Saying['parameters'];

/** The morning in one sentence: how many parcels can go, and the one thing that is most pressing after that. */
export function sayMorning(data: MorningData): Saying {
  const begin = sayBeginning(data);
  if (begin) return begin;
  const ready = data.orders.filter(isCovered).length;
  const late = data.orders.filter(
    (order) => order.view.wantedBy < data.book.today && !isCovered(order),
  ).length;
  return saying('morning-says', { ready, late, ...mostPressing(data) });
}

/** An empty workshop: what has to be there before anything can be ordered. */
function sayBeginning({ book, orders, runs }: MorningData): Saying | null {
  if (orders.length > 0 || runs.length > 0 || book.batches.length > 0) return null;
  if (book.materials.size === 0) return saying('morning-first-materials');
  if (book.lots.length === 0) return saying('morning-first-count');
  if (book.formulas.size === 0) return saying('morning-first-formula');
  return book.products.size === 0 ? saying('morning-first-product') : null;
}

function mostPressing(data: MorningData): Facts {
  return meltFacts(data) ?? firmFacts(data) ?? runFacts(data) ?? makeFacts(data) ?? buyFacts(data) ?? REST;
}

const REST: Facts = { pressing: 'nothing' };

/** A melt that can wait comes after what is on the bench. */
function meltFacts(data: MorningData): Facts | null {
  const { book } = data;
  const [melt] = listMelts(data);
  if (!melt) return null;
  const { number, wantedBy } = melt.first.view;
  const begin = localDate(melt.latest, book.timeZone);
  return {
    pressing: melt.state === 'stop' ? 'meltLate' : melt.state === 'watch' ? 'meltToday' : 'melt',
    item: melt.base.name,
    latest: melt.latest,
    begin,
    beginNear: nearDay(begin, book.today),
    number: String(number),
    wantedBy,
    wantedByNear: nearDay(wantedBy, book.today),
  };
}

function firmFacts({ book }: MorningData): Facts | null {
  const lot = book.lots.find(
    (row) =>
      row.formula_kind === 'base' &&
      row.firm_from !== null &&
      row.firm_said_at === null &&
      row.status === 'quarantine' &&
      Date.parse(row.firm_from) <= Date.parse(book.now),
  );
  return lot ? { pressing: 'firm', item: lot.item_name } : null;
}

function runFacts({ runs }: MorningData): Facts | null {
  const [run] = [...runs].sort((one, other) => Number(other.is_closed) - Number(one.is_closed));
  if (!run) return null;
  const { name } = JSON.parse(run.product_details) as { readonly name: string };
  return { pressing: run.is_closed ? 'release' : 'fill', item: name };
}

function makeFacts(data: MorningData): Facts | null {
  const next = listTinsToMake(data).find(({ state }) => state === 'ready');
  return next ? { pressing: 'make', item: next.product.name, units: next.units } : null;
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
