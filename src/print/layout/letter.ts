import { letterWords as words } from '../../words/index.ts';
import { footerOf } from './footer-of.ts';
import type { Paper } from './paper.ts';
import { writeDay } from './write-day.ts';

/** What is asked of a supplier, as a letter to print. */
export interface SupplierLetter {
  readonly supplier: string;
  readonly sender: readonly string[];
  /** ISO day. */
  readonly date: string;
  readonly materials: readonly string[];
  readonly asks: readonly { readonly material: string; readonly points: readonly string[] }[];
  readonly createdAt: string;
}

export const buildLetter = (letter: SupplierLetter): Paper => ({
  title: words.title,
  facts: [
    [words.to, letter.supplier],
    [words.from, letter.sender.filter((line) => line.trim() !== '').join('\n')],
    [words.on, writeDay(letter.date)],
  ],
  tables: [],
  sections: [
    { heading: words.asks, level: 1, paragraphs: [words.opens(letter.materials)] },
    ...letter.asks.map(({ material, points }) => ({
      heading: material,
      level: 2 as const,
      paragraphs: points.map((point) => `– ${point}`),
    })),
  ],
  notes: [words.closes, words.thanks],
  footer: footerOf(letter.sender[0] ?? '', words.title),
  createdAt: letter.createdAt,
});
