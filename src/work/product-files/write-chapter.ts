import type { productFiles } from '../../contract/index.ts';

export type Chapter = productFiles.Chapter;
export type Words = productFiles.Words;
export type Gap = productFiles.Gap;
type Table = Chapter['tables'][number];
type Column = Table['columns'][number];

/** A chapter with nothing in it but what is given. */
export const chapter = (
  key: string,
  level: Chapter['level'],
  title: Words,
  rest: Partial<Omit<Chapter, 'key' | 'level' | 'title'>> = {},
): Chapter => ({
  source: null,
  state: 'there',
  lacks: 0,
  says: [],
  cautions: [],
  entries: [],
  tables: [],
  files: [],
  mayAttach: false,
  ...rest,
  key,
  level,
  title,
});

export const entry = (label: Words, text: Words) => ({ label, text });
export const word = (title: Words): Column => ({ title, isNumber: false });
export const figure = (title: Words): Column => ({ title, isNumber: true });

/** A table, or none where it has no rows. */
export const tableOf = (caption: Words, columns: readonly Column[], rows: readonly Words[][]): Table[] =>
  rows.length === 0 ? [] : [{ caption, columns: [...columns], rows: [...rows] }];

/** What somebody typed, or nothing. */
export const typed = (text: string): string[] => (text === '' ? [] : [text]);
