/** A square code: true is dark. Row by row, all of one length, without its quiet zone. */
export type QrSquares = readonly (readonly boolean[])[];

/** Widths in modules, bar and space by turns from the first bar on. */
export type BarWidths = readonly number[];

/** Layout encodes nothing itself: whoever draws hands the codes in, like the metrics of the fonts. Null: too much for one. */
export interface CodeMaker {
  qr(content: string): QrSquares | null;
  /** Thirteen digits with their check digit. */
  ean13(digits: string): BarWidths | null;
}
