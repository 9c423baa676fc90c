import type { Saying, trace } from '../../contract/index.ts';
import { type Exact, roundToStep, toText } from '../../core/quantity/index.ts';
import { nearDay } from '../orders/near-day.ts';
import type { BookFormula } from '../orders/read-order-book.ts';
import type { Barred } from '../orders/serve-orders.ts';
import { saying } from '../saying.ts';
import { findLastMeltDay, findLatestStart } from './latest-start.ts';
import { listClaimLines } from './list-claims.ts';
import { listScaleChecks } from './list-scale-checks.ts';
import { listTinsToMake, type TinsToMake } from './list-tins-to-make.ts';
import { listUnderWay } from './list-under-way.ts';
import type { MorningData, OrderInTurn } from './read-morning.ts';

/** What is not known of what was begun, then that itself, then what open orders lack: bases to melt, then tins. */
export function listMakings(data: MorningData): trace.MorningLine[] {
  const makings = [
    ...listUnderWay(data),
    ...listMelts(data).map((melt) => meltLine(data, melt)),
    ...listTinsToMake(data).map((tins) => makeLine(data, tins)),
  ];
  return [...listClaimLines(data), ...listScaleChecks(data, makings), ...makings];
}

/** A base that open orders lack, and until when it has to be begun for the first of them. */
export interface Melt {
  readonly base: BookFormula;
  readonly grams: string;
  readonly first: OrderInTurn;
  /** The day by which it is melted in good time; today at the earliest. */
  readonly begin: string;
  readonly state: 'ready' | 'watch' | 'stop';
  /** It may not be made for sale, and why. */
  readonly barred: Barred | undefined;
}

/** The most pressing first. Nothing is melted for a mixture that may not be made for sale. */
export function listMelts({ book, orders }: MorningData): Melt[] {
  const melts = new Map<string, { readonly first: OrderInTurn; readonly grams: Exact }>();
  for (const order of orders) {
    const { nets, lines, barred } = order.served;
    if (barred.some(({ formulaId }) => lines.some((line) => line.product.formulaId === formulaId))) continue;
    for (const { item, toMake } of nets) {
      if (book.formulas.get(item.itemId)?.kind !== 'base' || toMake.isZero()) continue;
      const before = melts.get(item.itemId);
      melts.set(item.itemId, { first: before?.first ?? order, grams: toMake.plus(before?.grams ?? 0) });
    }
  }
  return [...melts]
    .flatMap(([baseId, { first, grams }]) => meltOf(book, baseId, first, grams))
    .sort(
      (one, other) =>
        one.begin.localeCompare(other.begin) ||
        one.first.view.wantedBy.localeCompare(other.first.view.wantedBy),
    );
}

function meltOf(book: MorningData['book'], baseId: string, first: OrderInTurn, grams: Exact): Melt[] {
  const base = book.formulas.get(baseId);
  if (!base) return [];
  const longest = base.details?.settingHours?.most ?? 0;
  const { wantedBy } = first.view;
  const lastDay = findLastMeltDay(wantedBy, longest);
  const isPast = lastDay < book.today;
  const begin = isPast ? book.today : lastDay;
  return [
    {
      base,
      grams: toText(roundToStep(grams, '0.1', 'up')),
      first,
      begin,
      state: pressing(book, begin, findLatestStart(wantedBy, longest, book.timeZone)),
      barred: first.served.barred.find((row) => row.formulaId === baseId),
    },
  ];
}

/** Stop: too late at the longest setting time. Watch: it has to be today. */
function pressing(
  { now, today }: MorningData['book'],
  begin: string,
  latest: string,
): 'ready' | 'watch' | 'stop' {
  if (Date.parse(latest) < Date.parse(now)) return 'stop';
  return begin === today ? 'watch' : 'ready';
}

const MELT_WORDS = {
  ready: 'morning-may-begin',
  watch: 'morning-begin-today',
  stop: 'morning-begun-too-late',
} as const;

function meltLine(data: MorningData, melt: Melt): trace.MorningLine {
  const { book } = data;
  const parts = new Set(melt.base.lines.map((line) => line.item_id));
  const grams = saying('morning-melt-grams', { grams: melt.grams });
  const line = { key: `melt ${melt.base.id}`, title: melt.base.name, level: null };
  if (melt.barred) return { ...line, ...barredLine(melt.barred, [grams]) };
  return {
    ...line,
    state: melt.state,
    stateWord: saying(MELT_WORDS[melt.state]),
    detail: [saying('morning-melt-until', meltFacts(book, melt)), grams, ...sayShort(data, parts)],
    action: {
      words: saying('morning-melt'),
      to: `/making/new?formula=${melt.base.id}&grams=${melt.grams}`,
    },
  };
}

/** By when a base is melted, and for which order. */
export function meltFacts(
  { today }: MorningData['book'],
  { first, begin, state }: Melt,
): Saying['parameters'] {
  const { number, wantedBy } = first.view;
  return {
    begin,
    beginNear: nearDay(begin, today),
    isLate: state === 'stop' ? 'yes' : 'no',
    number: String(number),
    wantedBy,
    wantedByNear: nearDay(wantedBy, today),
  };
}

/** What is ordered and may not be made for sale is not advised: first its check has to be mended. */
const barredLine = (
  { formulaId, name, number, reasons }: Barred,
  detail: readonly Saying[],
): Pick<trace.MorningLine, 'state' | 'stateWord' | 'detail' | 'action'> => ({
  state: 'stop',
  stateWord: saying('morning-barred'),
  detail: [...detail, saying('morning-not-for-sale', { item: name, number }), ...reasons.slice(0, 1)],
  action: { words: saying('morning-see-check'), to: `/formulas/${formulaId}/check` },
});

/** Which of these parts has to be bought first. */
function sayShort({ book, needs }: MorningData, parts: ReadonlySet<string | null>): Saying[] {
  return [...needs.short.keys()]
    .filter((itemId) => parts.has(itemId))
    .map((itemId) => sayLack(book, itemId, book.materials.get(itemId)?.name ?? ''));
}

/** What is on its way is waited for, not bought again. */
const sayLack = ({ onTheirWay }: MorningData['book'], itemId: string, item: string): Saying =>
  saying(onTheirWay.has(itemId) ? 'morning-once-come' : 'morning-buy-first', { item });

const MAKE_STATES = { ready: 'ready', waits: 'going', lacks: 'stop', barred: 'stop' } as const;
const MAKE_WORDS = {
  ready: 'morning-base-there',
  waits: 'morning-base-not-yet',
  lacks: 'morning-lacks',
  barred: 'morning-barred',
} as const;

function makeLine({ book }: MorningData, tins: TinsToMake): trace.MorningLine {
  const { product, units, first, state } = tins;
  const { wantedBy, number } = first.view;
  const line = { key: `make ${product.id} ${state}`, title: product.name, level: null };
  const toMake = saying('morning-tins-to-make', { units });
  const wanted = { wantedBy, wantedByNear: nearDay(wantedBy, book.today) };
  const forWhom = saying('morning-make-for', { ...wanted, number: String(number), others: tins.others });
  if (tins.barred) return { ...line, ...barredLine(tins.barred, [toMake, forWhom]) };
  const isLate = state === 'ready' && wantedBy < book.today;
  const isToday = state === 'ready' && wantedBy === book.today;
  const nameOf = (id: string) => book.materials.get(id)?.name ?? book.formulas.get(id)?.name ?? '';
  return {
    ...line,
    state: isLate ? 'stop' : isToday ? 'watch' : MAKE_STATES[state],
    stateWord: saying(isLate ? 'morning-late' : MAKE_WORDS[state]),
    detail: [
      ...(state === 'ready' ? [] : [toMake]),
      forWhom,
      ...tins.waitsFor.map((id) => saying('morning-once-firm', { item: nameOf(id) })),
      ...tins.lacks.map((id) => sayLack(book, id, nameOf(id))),
    ],
    action:
      state === 'waits'
        ? null
        : {
            words: saying('morning-make', { units }),
            to: `/making/new?product=${product.id}&units=${units}`,
          },
  };
}
