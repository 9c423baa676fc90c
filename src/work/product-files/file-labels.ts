import type { Market, orders } from '../../contract/index.ts';
import type { LabelElement } from '../../core/label/index.ts';
import { type LabelPiece, layoutCutSheet } from '../../print/layout/index.ts';
import { checkWords, labelPrintWords, labelWords, printWords, say } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { type ComposedPieces, composeLabelPieces } from '../labels/compose-pieces.ts';
import { exampleLabel } from '../labels/example-label.ts';
import { designOf, plainDesign } from '../labels/label-design.ts';
import { painter } from '../painter.ts';
import { textFile } from './zip-folder.ts';

/** What the labels of a product say in one market, as they are designed; batch and date are examples. */
export interface FileLabel {
  readonly market: Market;
  readonly productName: string;
  readonly composed: ComposedPieces;
}

interface LabelsOf {
  /** null: nobody has entered the product yet. */
  readonly productId: string | null;
  readonly details: orders.ProductDetails;
  readonly revisionId: string;
  readonly markets: readonly Market[];
  /** As if it were made on this day (YYYY-MM-DD): the day of the data, so that the same data says the same. */
  readonly madeOn: string;
}

export async function composeFileLabels(context: Context, of: LabelsOf): Promise<FileLabel[]> {
  const { details, productId, markets } = of;
  const design =
    productId === null ? plainDesign(details) : await designOf(context.storage.db, productId, details);
  const labels: FileLabel[] = [];
  for (const market of markets) {
    const example = exampleLabel(details, of.revisionId, of.madeOn);
    const composed = await composeLabelPieces(context, { ...example, design, market });
    labels.push({ market, productName: details.name, composed });
  }
  return labels;
}

/** Everything that stands on one piece, line by line, what is drawn in words. */
export const linesOf = ({ texts, openedMonths, hasHandInBook, code, artwork }: LabelPiece): string[] => [
  ...texts.map(({ heading, text }) => (heading === '' ? text : `${heading} ${text}`)),
  ...(openedMonths === undefined ? [] : [printWords.label.openJar(openedMonths)]),
  ...(hasHandInBook === true ? [labelPrintWords.alt.handInBook] : []),
  ...(code === undefined ? [] : [labelPrintWords.alt[code.kind === 'qr' ? 'qr' : 'ean13'](code.content)]),
  ...(artwork === undefined ? [] : [labelPrintWords.alt.artwork]),
];

const { label: words } = printWords.written;

/** Piece by piece as designed, then element by element as the law asks for them. */
export function labelTextFile({ market, productName, composed }: FileLabel, timeZone: string): Uint8Array {
  const { pieces, missing, text } = composed;
  const lines = [
    `${productName}, ${checkWords.market[market]}`,
    words.examples,
    ...missing.map((each) => words.lacks(say(each, { timeZone }))),
    ...pieces.flatMap(({ piece }) => ['', `[${labelWords.roles[piece.role]}]`, ...linesOf(piece)]),
    '',
    `[${words.elements}]`,
    ...(text?.elements ?? []).map(sayElement),
  ];
  return textFile(lines.join('\n'));
}

const sayElement = ({ element, text, state }: LabelElement): string =>
  `${labelWords.nameOf(element)}: ${state === 'there' ? text : `(${labelWords.states[state]}) ${text}`}`;

/** The labels at true size; null where one of them cannot be drawn as it is. */
export async function labelPdf(
  { productName, market, composed: { pieces } }: FileLabel,
  asOf: string,
): Promise<Uint8Array | null> {
  const layouts = pieces.flatMap(({ layout }) => (layout.ok ? [layout.value] : []));
  if (layouts.length === 0 || layouts.length < pieces.length) return null;
  const { loadFaces, paintDocument } = await painter();
  const heading = { title: `${productName}, ${checkWords.market[market]}`, copies: 1 };
  const sheet = layoutCutSheet(layouts, heading, loadFaces());
  return sheet.ok ? paintDocument(sheet.value, asOf) : null;
}
