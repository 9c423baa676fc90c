import type { Saying, trace } from '../../contract/index.ts';
import { exact, MICROGRAMS_PER_GRAM } from '../../core/quantity/index.ts';
import type { LotAtHand, RunHead } from '../../storage/index.ts';
import { briefGrams } from '../../words/index.ts';
import { sumHolds } from '../filling/name-hold.ts';
import { nearDay } from '../orders/near-day.ts';
import { sayMomentOf } from '../orders/say-moment.ts';
import { gramsText } from '../quantity-text.ts';
import { saying } from '../saying.ts';
import type { MorningData } from './read-morning.ts';
import { titleOf } from './title-of.ts';

/** What was begun and wants the next hand: batches, bases that set, filling runs, bowls. */
export const listUnderWay = (data: MorningData): trace.MorningLine[] => [
  ...data.book.batches.map((batch) => ({
    key: `batch ${batch.id}`,
    title: titleOf('morning-batch', { item: batch.formula_name, number: batch.number }),
    state: 'going' as const,
    stateWord: saying('morning-being-made'),
    detail: [saying('morning-planned', { grams: briefGrams(gramsText(batch.planned_ug)) })],
    action: { words: saying('morning-go-on'), to: `/making/${batch.id}` },
    level: null,
  })),
  ...data.book.lots.filter(waitsForFirmWord).map((lot) => firmLine(data, lot)),
  ...data.runs.map((run) => runLine(data, run)),
  ...data.book.lots.filter((lot) => isBowlToFill(data, lot)).map(bowlLine),
];

const waitsForFirmWord = (lot: LotAtHand): boolean =>
  lot.formula_kind === 'base' &&
  lot.firm_from !== null &&
  lot.firm_said_at === null &&
  (lot.status === 'quarantine' || lot.status === 'released');

/** From the earliest end of its range on somebody may look and say so; that instant itself counts. */
function firmLine({ book }: MorningData, lot: LotAtHand): trace.MorningLine {
  const { firm_from: from, firm_to: to } = lot;
  const hasCome = (instant: string | null) => instant !== null && Date.parse(instant) <= Date.parse(book.now);
  const mayBeFirm = hasCome(from);
  const word = hasCome(to) ? 'morning-should-be-firm' : 'morning-may-be-firm';
  return {
    key: `firm ${lot.id}`,
    title: titleOf('morning-batch', { item: lot.item_name, number: lot.number }),
    state: mayBeFirm ? 'ready' : 'going',
    stateWord: saying(mayBeFirm ? word : 'morning-sets'),
    detail: [
      saying('morning-firm-between', {
        ...sayMomentOf(book, 'from', from ?? book.now),
        ...sayMomentOf(book, 'to', to ?? from ?? book.now),
        grams: briefGrams(gramsText(lot.on_hand)),
      }),
    ],
    action: { words: saying(mayBeFirm ? 'morning-is-firm' : 'morning-look'), to: `/shelf/lots/${lot.id}` },
    level: null,
  };
}

function runLine(data: MorningData, run: RunHead): trace.MorningLine {
  const { name } = JSON.parse(run.product_details) as { readonly name: string };
  const line = {
    key: `run ${run.id}`,
    title: titleOf('morning-batch', { item: name, number: run.number }),
    level: null,
  };
  const holds = sumHolds(data.book.heldRuns.get(run.id) ?? []);
  if (holds) return { ...line, ...heldLine(data, run, holds) };
  return {
    ...line,
    state: run.is_closed ? 'ready' : 'going',
    stateWord: saying(run.is_closed ? 'morning-waits-for-release' : 'morning-being-filled'),
    detail: run.is_closed ? sayFilled(data, run) : [saying('morning-run-planned', { units: run.wanted })],
    action: {
      words: saying(run.is_closed ? 'morning-release' : 'morning-go-on'),
      to: `/filling/${run.id}`,
    },
  };
}

/** Filled, and held at its release: no order is told to wait for it. */
const heldLine = ({ book }: MorningData, run: RunHead, holds: Record<string, string | number>) => ({
  state: 'stop' as const,
  stateWord: saying('morning-held'),
  detail: [saying('morning-run-filled', { units: unitsOf(book, run) }), saying('morning-run-held', holds)],
  action: { words: saying('morning-see-held'), to: `/filling/${run.id}` },
});

const unitsOf = (book: MorningData['book'], run: RunHead): number =>
  book.lots.find((row) => row.filling_run_id === run.id)?.on_hand ?? 0;

/** What was really filled, and which orders wait for tins of it: the rest is for the shelf. */
function sayFilled({ book, orders }: MorningData, run: RunHead): Saying[] {
  const waiting = orders.flatMap(({ view, served }) =>
    served.lines
      .filter((line) => line.product.id === run.product_id && line.waiting > 0)
      .map((line) => ({ view, units: line.waiting })),
  );
  return [
    saying('morning-run-filled', { units: unitsOf(book, run) }),
    ...waiting.map(({ view: { number, wantedBy }, units }) => {
      const wanted = { wantedBy, wantedByNear: nearDay(wantedBy, book.today) };
      return saying('morning-run-for', { number: String(number), waiting: units, ...wanted });
    }),
    ...(waiting.length === 0 ? [saying('morning-run-for-shelf')] : []),
  ];
}

/** A bowl that nobody is filling and that holds one tin at the least; what clings to it is no work for a morning. */
function isBowlToFill({ book, runs }: MorningData, lot: LotAtHand): boolean {
  if (lot.formula_kind !== 'mixture' || lot.status !== 'released' || lot.on_hand <= 0) return false;
  if (runs.some((run) => run.batch_id === lot.batch_id && !run.is_closed)) return false;
  const own = [...book.products.values()].filter((product) => product.formulaId === lot.item_id);
  const held = exact(lot.on_hand).div(MICROGRAMS_PER_GRAM);
  return own.length === 0 || own.some((product) => product.aimGrams.lte(held));
}

const bowlLine = (lot: LotAtHand): trace.MorningLine => ({
  key: `bowl ${lot.id}`,
  title: titleOf('morning-bowl', { item: lot.item_name, number: lot.number }),
  state: 'ready',
  stateWord: saying('morning-to-fill'),
  detail: [saying('morning-bowl-holds', { grams: briefGrams(gramsText(lot.on_hand)) })],
  action: { words: saying('morning-fill'), to: `/making/${lot.batch_id ?? ''}/fill` },
  level: null,
});
