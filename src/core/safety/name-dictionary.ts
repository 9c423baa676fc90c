import { normaliseName } from './read-name.ts';
import type { AllergenRow, PublishedSafetyTables } from './safety-table-rows.ts';

/** What one row of any table prints under a name: its CAS numbers, those of them that no other material shares, its other names. */
export interface DictionaryEntry {
  readonly cas: readonly string[];
  readonly ownCas: readonly string[];
  readonly names: readonly string[];
}

/** By name, in the one spelling, what every table prints beside it. */
export type NameDictionary = ReadonlyMap<string, readonly DictionaryEntry[]>;

interface Printed {
  readonly names: readonly string[];
  readonly cas: readonly string[];
  /** Other names of the same row, where its own names are not all of them. */
  readonly alsoCalled?: readonly string[];
}

/** An entry stands for all its numbers, a member of it for its own alone. */
const printedInEntry = ({ labelName, match, members }: AllergenRow): Printed[] => {
  const names = [labelName, ...match.names];
  return [
    { names, cas: match.cas },
    ...members.map(({ name, cas }) => ({ names: [name], cas, alsoCalled: names })),
  ];
};

const printedIn = ({
  allergens,
  restrictions,
  ifra,
  materials,
  substances,
}: PublishedSafetyTables): Printed[] => [
  ...allergens.flatMap(printedInEntry),
  ...[...restrictions, ...ifra].map(({ name, aliases = [], cas }) => ({ names: [name, ...aliases], cas })),
  ...materials.map(({ name, inciEu, aliases = [], cas }) => ({ names: [name, inciEu, ...aliases], cas })),
  ...substances.map(({ name, cas }) => ({ names: [name], cas })),
];

/**
 * One dictionary over all tables: a paper that lists a name without a number calls it as one table does, and the others
 * know it by another name. A number that several materials share decides nothing here either.
 */
export function buildNameDictionary(
  published: PublishedSafetyTables,
  isSharedCas: (cas: string) => boolean,
): NameDictionary {
  const dictionary = new Map<string, DictionaryEntry[]>();
  for (const { names, cas, alsoCalled = names } of printedIn(published)) {
    const spelt = new Set(alsoCalled.map(normaliseName));
    const entry = { cas, ownCas: cas.filter((number) => !isSharedCas(number)), names: [...spelt] };
    for (const name of new Set(names.map(normaliseName)))
      dictionary.set(name, [...(dictionary.get(name) ?? []), entry]);
  }
  return dictionary;
}
