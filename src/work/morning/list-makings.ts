import type { Saying, trace } from '../../contract/index.ts';
import { gramsFromMicrograms, roundToStep, toText } from '../../core/quantity/index.ts';
import { localDate } from '../local-date.ts';
import { nearDay } from '../orders/near-day.ts';
import type { BookFormula, BookProduct } from '../orders/read-order-book.ts';
import { saying } from '../saying.ts';
import { findLatestStart } from './latest-start.ts';
import { listUnderWay } from './list-under-way.ts';
import type { MorningData, OrderInTurn } from './read-morning.ts';

/** What was begun first, then what open orders lack: bases to melt, then tins whose base is there. */
export const listMakings = (data: MorningData): trace.MorningLine[] => [
  ...listUnderWay(data),
  ...listMelts(data).map((melt) => meltLine(data, melt)),
  ...listFillable(data).map((fillable) => makeLine(data, fillable)),
];

/** A base that open orders lack, and until when it has to be begun for the first of them. */
export interface Melt {
  readonly base: BookFormula;
  readonly grams: string;
  readonly first: OrderInTurn;
  readonly latest: string;
  readonly state: 'ready' | 'watch' | 'stop';
}

/** The most pressing first. */
export function listMelts({ book, orders, needs }: MorningData): Melt[] {
  const melts = [...needs.toMelt].flatMap(([baseId, micrograms]): Melt[] => {
    const base = book.formulas.get(baseId);
    const first = orders.find(({ served }) =>
      served.nets.some((net) => net.item.itemId === baseId && !net.toMake.isZero()),
    );
    if (!base || !first) return [];
    const grams = toText(roundToStep(gramsFromMicrograms(micrograms), '0.1', 'up'));
    const longest = base.details?.settingHours?.most ?? 0;
    const latest = findLatestStart(first.view.wantedBy, longest, book.timeZone);
    return [{ base, grams, first, latest, state: pressing(book, latest) }];
  });
  return melts.sort((one, other) => Date.parse(one.latest) - Date.parse(other.latest));
}

/** Stop: too late at the longest setting time. Watch: it has to be today. */
function pressing({ now, today, timeZone }: MorningData['book'], latest: string): 'ready' | 'watch' | 'stop' {
  if (Date.parse(latest) < Date.parse(now)) return 'stop';
  return localDate(latest, timeZone) === today ? 'watch' : 'ready';
}

const MELT_WORDS = {
  ready: 'morning-may-begin',
  watch: 'morning-begin-today',
  stop: 'morning-begun-too-late',
} as const;

function meltLine(data: MorningData, melt: Melt): trace.MorningLine {
  const { book } = data;
  const { number, wantedBy } = melt.first.view;
  const begin = localDate(melt.latest, book.timeZone);
  const parts = new Set(melt.base.lines.map((line) => line.item_id));
  return {
    key: `melt ${melt.base.id}`,
    title: melt.base.name,
    state: melt.state,
    stateWord: saying(MELT_WORDS[melt.state]),
    detail: [
      saying('morning-melt-until', {
        latest: melt.latest,
        begin,
        beginNear: nearDay(begin, book.today),
        isLate: melt.state === 'stop' ? 'yes' : 'no',
        number: String(number),
        wantedBy,
        wantedByNear: nearDay(wantedBy, book.today),
      }),
      saying('morning-melt-grams', { grams: melt.grams }),
      ...sayShort(data, parts),
    ],
    action: {
      words: saying('morning-melt'),
      to: `/making/new?formula=${melt.base.id}&grams=${melt.grams}`,
    },
    level: null,
  };
}

/** Tins that open orders lack and whose base is there and firm. */
export interface Fillable {
  readonly product: BookProduct;
  readonly units: number;
  readonly first: OrderInTurn;
}

/** The first wanted first. Tins whose base is still to be melted or to set come once it is firm. */
export function listFillable({ book, orders }: MorningData): Fillable[] {
  const fillable = new Map<string, Fillable>();
  for (const order of orders) {
    const waits = basesWaitedFor(book, order);
    for (const { product, toMake } of order.served.lines) {
      const bases = book.formulas.get(product.formulaId)?.lines ?? [];
      if (toMake === 0 || bases.some((line) => waits.has(line.item_id))) continue;
      if (order.served.unknown.length > 0) continue;
      const known = fillable.get(product.id) ?? { product, units: 0, first: order };
      fillable.set(product.id, { ...known, units: known.units + toMake });
    }
  }
  return [...fillable.values()];
}

const basesWaitedFor = ({ formulas }: MorningData['book'], { served }: OrderInTurn): Set<string> =>
  new Set(
    served.nets
      .filter(({ item, toMake, setting }) => {
        const isBase = formulas.get(item.itemId)?.kind === 'base';
        return isBase && (!toMake.isZero() || setting.length > 0);
      })
      .map(({ item }) => item.itemId),
  );

function makeLine(data: MorningData, { product, units, first }: Fillable): trace.MorningLine {
  const { wantedBy, number } = first.view;
  const short = sayShortOf(data, product);
  const isLate = wantedBy < data.book.today;
  const isToday = wantedBy === data.book.today;
  const wanted = { wantedBy, wantedByNear: nearDay(wantedBy, data.book.today), number: String(number) };
  return {
    key: `make ${product.id}`,
    title: product.name,
    state: short.length > 0 || isLate ? 'stop' : isToday ? 'watch' : 'ready',
    stateWord: saying(short.length > 0 ? 'morning-lacks' : isLate ? 'morning-late' : 'morning-base-there'),
    detail: [saying('morning-make-for', wanted), ...short],
    action: {
      words: saying('morning-make', { units }),
      to: `/making/new?product=${product.id}&units=${units}`,
    },
    level: null,
  };
}

/** What has to be bought before tins of this product can be made and filled. */
export function sayShortOf(data: MorningData, { details, formulaId }: BookProduct): Saying[] {
  const { tinId, lidId, labelId } = details;
  const lines = data.book.formulas.get(formulaId)?.lines ?? [];
  return sayShort(data, new Set([tinId, lidId, labelId, ...lines.map((line) => line.item_id)]));
}

/** Which of these parts has to be bought first. */
function sayShort({ book, needs }: MorningData, parts: ReadonlySet<string | null>): Saying[] {
  return [...needs.short.keys()]
    .filter((itemId) => parts.has(itemId))
    .map((itemId) => saying('morning-buy-first', { item: book.materials.get(itemId)?.name ?? '' }));
}
