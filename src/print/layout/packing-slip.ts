import { printWords } from '../../words/index.ts';
import { footerOf } from './footer-of.ts';
import type { Paper } from './paper.ts';
import { writeDay } from './write-day.ts';

/** What lies in a parcel, for whoever opens it. */
export interface PackingSlip {
  readonly sender: Addressee;
  readonly customer: Addressee;
  readonly orderNumber: string;
  /** ISO day on which the order was taken. */
  readonly placedOn: string;
  /** ISO day of the slip. */
  readonly date: string;
  /** The parcel is on its way: the day of the slip is the day on which it went. */
  readonly hasGone: boolean;
  readonly lines: readonly PackingLine[];
  readonly notes?: readonly string[];
  readonly createdAt: string;
}

export interface Addressee {
  readonly name: string;
  readonly addressLines: readonly string[];
}

export interface PackingLine {
  readonly productName: string;
  /** Such as `80 g`. */
  readonly declaredContent?: string;
  readonly units: number;
  readonly batchNumber: string;
  /** ISO day or month. */
  readonly bestBefore?: string;
}

export function buildPackingSlip(slip: PackingSlip): Paper {
  const words = printWords.packingSlip;
  const units = slip.lines.reduce((sum, line) => sum + line.units, 0);
  return {
    title: words.title,
    facts: [
      [words.to, addressText(slip.customer)],
      [words.from, addressText(slip.sender)],
      [words.order, slip.orderNumber],
      [words.placedOn, writeDay(slip.placedOn)],
      [slip.hasGone ? words.sentOn : words.drawnUpOn, writeDay(slip.date)],
    ],
    tables: [
      {
        columns: [
          { title: words.columns.units, align: 'right', isStrong: true },
          { title: words.columns.product, align: 'left' },
          { title: words.columns.content, align: 'right' },
          { title: words.columns.batch, align: 'left' },
          { title: words.columns.bestBefore, align: 'left' },
        ],
        rows: slip.lines.map((line) => [
          String(line.units),
          line.productName,
          line.declaredContent ?? '',
          line.batchNumber,
          line.bestBefore === undefined ? '' : writeDay(line.bestBefore),
        ]),
        totals: [String(units), words.total, '', '', ''],
      },
    ],
    notes: [...(slip.notes ?? []), words.keep],
    footer: footerOf(slip.sender.name, words.titleOf(slip.orderNumber)),
    createdAt: slip.createdAt,
  };
}

const addressText = ({ name, addressLines }: Addressee): string =>
  [name, ...addressLines].filter((line) => line.trim() !== '').join('\n');
