import { printWords } from '../../words/index.ts';
import { footerOf } from './footer-of.ts';
import type { Paper, PaperTable } from './paper.ts';
import { writeDay } from './write-day.ts';

/** Where a suspect lot went: what was made from it, who had it, what is still here. */
export interface TraceReport {
  readonly workshopName: string;
  readonly suspectLot: string;
  readonly suspectName: string;
  /** The answer in one sentence. */
  readonly summary: string;
  /** ISO day. */
  readonly drawnUpOn: string;
  readonly shippedUnits: number;
  readonly unitsToBlock: number;
  readonly madeFrom: readonly TracedLot[];
  readonly orders: readonly TracedOrder[];
  readonly stock: readonly TracedStock[];
  readonly notes?: readonly string[];
  readonly createdAt: string;
}

export interface TracedLot {
  readonly lot: string;
  readonly what: string;
  /** ISO day. */
  readonly madeOn: string;
  readonly state: string;
}

export interface TracedOrder {
  readonly orderNumber: string;
  /** Left empty for a sale at a stall. */
  readonly customer: string;
  readonly sentOn: string;
  readonly lot: string;
  readonly units: number;
}

export interface TracedStock {
  readonly lot: string;
  readonly place: string;
  readonly units: number;
}

export function buildTraceReport(report: TraceReport): Paper {
  const words = printWords.traceReport;
  return {
    title: words.titleOf(report.suspectLot),
    subtitle: report.summary,
    facts: [
      [words.suspect, `${report.suspectLot}\n${report.suspectName}`],
      [words.shipped, String(report.shippedUnits)],
      [words.toBlock, String(report.unitsToBlock)],
      [words.drawnUpOn, writeDay(report.drawnUpOn)],
    ],
    tables: [lotsTable(report.madeFrom), ordersTable(report.orders), stockTable(report.stock)],
    notes: report.notes ?? [],
    signatures: words.signatures,
    footer: footerOf(report.workshopName, words.titleOf(report.suspectLot)),
    createdAt: report.createdAt,
  };
}

function lotsTable(lots: readonly TracedLot[]): PaperTable {
  const { columns, madeFrom } = printWords.traceReport;
  return {
    heading: madeFrom,
    columns: [
      { title: columns.lot, align: 'left' },
      { title: columns.what, align: 'left' },
      { title: columns.made, align: 'left' },
      { title: columns.state, align: 'left' },
    ],
    rows: lots.map(({ lot, what, madeOn, state }) => [lot, what, writeDay(madeOn), state]),
  };
}

function ordersTable(orders: readonly TracedOrder[]): PaperTable {
  const { columns, orders: heading, total } = printWords.traceReport;
  return {
    heading,
    columns: [
      { title: columns.units, align: 'right', isStrong: true },
      { title: columns.order, align: 'left' },
      { title: columns.customer, align: 'left' },
      { title: columns.sent, align: 'left' },
      { title: columns.lot, align: 'left' },
    ],
    rows: orders.map((order) => [
      String(order.units),
      order.orderNumber,
      order.customer,
      writeDay(order.sentOn),
      order.lot,
    ]),
    totals: [String(sumUnits(orders)), total, '', '', ''],
  };
}

function stockTable(stock: readonly TracedStock[]): PaperTable {
  const { columns, stock: heading, total } = printWords.traceReport;
  return {
    heading,
    columns: [
      { title: columns.units, align: 'right', isStrong: true },
      { title: columns.lot, align: 'left' },
      { title: columns.place, align: 'left' },
    ],
    rows: stock.map(({ units, lot, place }) => [String(units), lot, place]),
    totals: [String(sumUnits(stock)), total, ''],
  };
}

const sumUnits = (lines: readonly { readonly units: number }[]): number =>
  lines.reduce((sum, { units }) => sum + units, 0);
