import type { Paper } from '../../src/print/layout/index.ts';

export const buildPaper = (change: Partial<Paper> = {}): Paper => ({
  title: 'Stock on the shelf',
  facts: [['Counted on', '25 November 2026']],
  tables: [],
  notes: [],
  footer: 'Larkfold Butters',
  createdAt: '2026-11-25T09:00:00Z',
  ...change,
});

/** A table of numbered rows, each text in it different from all others. */
export const numberedRows = (count: number): string[][] =>
  Array.from({ length: count }, (_, index) => [
    `Lot ${index + 1}`,
    `Tub on shelf no. ${index + 1}`,
    `${index + 1}.5`,
  ]);
