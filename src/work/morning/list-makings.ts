import type { Saying, trace } from '../../contract/index.ts';
import { gramsFromMicrograms, roundToStep, toText } from '../../core/quantity/index.ts';
import { localDate } from '../local-date.ts';
import { nearDay } from '../orders/near-day.ts';
import type { BookFormula } from '../orders/read-order-book.ts';
import { saying } from '../saying.ts';
import { findLatestStart } from './latest-start.ts';
import { listTinsToMake, type TinsToMake } from './list-tins-to-make.ts';
import { listUnderWay } from './list-under-way.ts';
import type { MorningData, OrderInTurn } from './read-morning.ts';

/** What was begun first, then what open orders lack: bases to melt, then tins. */
export const listMakings = (data: MorningData): trace.MorningLine[] => [
  ...listUnderWay(data),
  ...listMelts(data).map((melt) => meltLine(data, melt)),
  ...listTinsToMake(data).map((tins) => makeLine(data, tins)),
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

/** Which of these parts has to be bought first. */
function sayShort({ book, needs }: MorningData, parts: ReadonlySet<string | null>): Saying[] {
  return [...needs.short.keys()]
    .filter((itemId) => parts.has(itemId))
    .map((itemId) => sayLack(book, itemId, book.materials.get(itemId)?.name ?? ''));
}

/** What is on its way is waited for, not bought again. */
const sayLack = ({ onTheirWay }: MorningData['book'], itemId: string, item: string): Saying =>
  saying(onTheirWay.has(itemId) ? 'morning-once-come' : 'morning-buy-first', { item });

const MAKE_STATES = { ready: 'ready', waits: 'going', lacks: 'stop' } as const;
const MAKE_WORDS = {
  ready: 'morning-base-there',
  waits: 'morning-base-not-yet',
  lacks: 'morning-lacks',
} as const;

function makeLine({ book }: MorningData, tins: TinsToMake): trace.MorningLine {
  const { product, units, first, state } = tins;
  const { wantedBy, number } = first.view;
  const isLate = state === 'ready' && wantedBy < book.today;
  const isToday = state === 'ready' && wantedBy === book.today;
  const nameOf = (id: string) => book.materials.get(id)?.name ?? book.formulas.get(id)?.name ?? '';
  return {
    key: `make ${product.id} ${state}`,
    title: product.name,
    state: isLate ? 'stop' : isToday ? 'watch' : MAKE_STATES[state],
    stateWord: saying(isLate ? 'morning-late' : MAKE_WORDS[state]),
    detail: [
      ...(state === 'ready' ? [] : [saying('morning-tins-to-make', { units })]),
      saying('morning-make-for', {
        wantedBy,
        wantedByNear: nearDay(wantedBy, book.today),
        number: String(number),
      }),
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
    level: null,
  };
}
