import type { ColumnAlign } from './set-paragraph.ts';

/** A paper of the workshop: A4, as many pages as it takes. Every text is already in the words that are to be read. */
export interface Paper {
  readonly title: string;
  readonly subtitle?: string;
  /** Boxed under the title: what must not be overlooked. */
  readonly banner?: string;
  readonly facts: readonly (readonly [label: string, value: string])[];
  /** Each with a triangle before it. */
  readonly cautions?: readonly string[];
  readonly tables: readonly PaperTable[];
  /** Chapters, after the tables: what takes more than a list. */
  readonly sections?: readonly PaperSection[];
  readonly notes: readonly string[];
  /** Ruled lines to write on by hand, with what they are for over them. */
  readonly writingSpaces?: readonly { readonly label: string; readonly lines: number }[];
  /** Lines to sign on, with what each is for. */
  readonly signatures?: readonly string[];
  readonly footer: string;
  /** ISO moment that the file states as its own. */
  readonly createdAt: string;
}

export interface PaperTable {
  readonly heading?: string;
  readonly columns: readonly PaperColumn[];
  /** As many cells as columns. */
  readonly rows: readonly (readonly PaperCell[])[];
  /** Under a rule at the end; as many cells as columns. */
  readonly totals?: readonly string[];
}

export interface PaperColumn {
  readonly title: string;
  readonly align: ColumnAlign;
  /** Taken from what stands in the column where not given. */
  readonly widthMm?: number;
  /** Heavy figures: what one looks for first. */
  readonly isStrong?: boolean;
  /** A box to write in by hand. */
  readonly isForHand?: boolean;
}

/** A remark stands under the text, with a triangle before it. */
export type PaperCell = string | { readonly text: string; readonly remark: string };

/** A heading with what stands under it, in this order. */
export interface PaperSection {
  readonly heading: string;
  /** 1: a chapter; 2: a part of the chapter before. */
  readonly level: 1 | 2;
  /** Quiet, under the heading: where it comes from. */
  readonly source?: string;
  readonly paragraphs?: readonly string[];
  /** Each with a triangle before it. */
  readonly cautions?: readonly string[];
  /** Label and text, one below the other. */
  readonly entries?: readonly (readonly [label: string, text: string])[];
  /** Bars one below the other, all to the same scale. */
  readonly bars?: readonly PaperBar[];
  readonly tables?: readonly PaperTable[];
  /** Each under its name, as wide as the text and no higher than half a page. */
  readonly pictures?: readonly PaperPicture[];
}

/** What there was and what was lost of it, as shares of the widest bar, 0 to 1. */
export interface PaperBar {
  readonly name: string;
  /** The same in words, for whoever hears it read. */
  readonly says: string;
  readonly foundShare: number;
  readonly lostShare: number;
}

/** PNG or JPEG, stored upright (see isPrintable). */
export interface PaperPicture {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** Where it is to stay small; else half a page. */
  readonly highestMm?: number;
}
