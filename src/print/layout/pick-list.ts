import { printWords } from '../../words/index.ts';
import { footerOf } from './footer-of.ts';
import type { Paper } from './paper.ts';
import { writeDay } from './write-day.ts';

/** What to take from which place for one order. No address: whoever picks needs none. */
export interface PickList {
  readonly workshopName: string;
  readonly orderNumber: string;
  /** Empty: a sale without a name. */
  readonly customerName: string;
  /** ISO day. */
  readonly sendBy?: string;
  readonly lines: readonly PickLine[];
  readonly notes: readonly string[];
  readonly createdAt: string;
}

export interface PickLine {
  readonly productName: string;
  readonly units: number;
  readonly batchNumber: string;
  readonly place: string;
  /** ISO day or month; none where the product bears the open jar only. */
  readonly bestBefore?: string;
}

export function buildPickList(list: PickList): Paper {
  const words = printWords.pickList;
  const units = list.lines.reduce((sum, line) => sum + line.units, 0);
  return {
    title: words.titleOf(list.orderNumber),
    facts: [
      [words.order, [list.orderNumber, list.customerName].filter((part) => part !== '').join(', ')],
      [words.sendBy, list.sendBy === undefined ? printWords.paper.notPlanned : writeDay(list.sendBy)],
      [words.units, String(units)],
    ],
    tables: [
      {
        columns: [
          { title: words.columns.units, align: 'right', isStrong: true },
          { title: words.columns.product, align: 'left' },
          { title: words.columns.place, align: 'left' },
          { title: words.columns.batch, align: 'left' },
          { title: words.columns.bestBefore, align: 'left' },
          { title: words.columns.picked, align: 'left', widthMm: 14, isForHand: true },
        ],
        rows: list.lines.map((line) => [
          String(line.units),
          line.productName,
          line.place,
          line.batchNumber,
          line.bestBefore === undefined ? '' : writeDay(line.bestBefore),
          '',
        ]),
      },
    ],
    notes: list.notes,
    signatures: words.signatures,
    footer: footerOf(list.workshopName, words.titleOf(list.orderNumber)),
    createdAt: list.createdAt,
  };
}
