import type { OriginFlag } from './answer-origins.ts';

/** Words of a label name or a botanical name, and the origin that they tell of. */
export interface OriginInName {
  readonly flag: OriginFlag;
  /** Whole words in lower case, with a space between two. */
  readonly words: readonly string[];
}

export interface NamedOrigin {
  readonly flag: OriginFlag;
  /** The name that says so, as it is written. */
  readonly inName: string;
}

/** Which origins the names of a material tell of, each once. A name tells of some, and never that there is none. */
export function readNamedOrigins(names: readonly string[], table: readonly OriginInName[]): NamedOrigin[] {
  const told = new Map<OriginFlag, NamedOrigin>();
  for (const inName of names) {
    const padded = ` ${wordsOf(inName)} `;
    for (const { flag, words } of table)
      if (!told.has(flag) && words.some((word) => padded.includes(` ${word} `)))
        told.set(flag, { flag, inName });
  }
  return [...told.values()];
}

/** "Prunus Amygdalus Dulcis (Sweet Almond) Oil" is six words in a row; brackets and strokes part as spaces do. */
const wordsOf = (name: string): string =>
  name
    .normalize('NFKD')
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word !== '')
    .join(' ');
