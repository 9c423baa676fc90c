import { buildNameDictionary } from './name-dictionary.ts';
import { normaliseName } from './read-name.ts';
import { indexRows, type Recognised } from './row-index.ts';
import type {
  AllergenRow,
  IfraRow,
  KnownMaterialRow,
  PublishedSafetyTables,
  RestrictionRow,
} from './safety-table-rows.ts';
import type { SafetyTables } from './safety-tables.ts';

const namedRow = <Row extends RestrictionRow | IfraRow>(row: Row): Recognised<Row> => ({
  row,
  names: [row.name, ...(row.aliases ?? [])],
  cas: row.cas,
  plantPart: row.plantPart,
  process: row.process,
  origin: 'origin' in row ? row.origin : undefined,
});

function groupBy<Row>(rows: readonly Row[], keys: (row: Row) => readonly string[]): Map<string, Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    for (const key of new Set(keys(row))) groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return groups;
}

/** Its label name, what it is matched by, and what its members are called: whatever of it stands on a paper. */
const namesOfEntry = ({ labelName, match, members }: AllergenRow): string[] => [
  labelName,
  ...match.names,
  ...members.map(({ name }) => name),
];

const namesOf = (material: KnownMaterialRow): string[] =>
  [material.name, material.inciEu, ...(material.aliases ?? [])].map(normaliseName);

export function buildSafetyTables(published: PublishedSafetyTables): SafetyTables {
  const sharedCas = groupBy(published.sharedCas, (row) => [row.cas]);
  return {
    allergens: indexRows(
      published.allergens.map((row) => ({ row, ...row.match, names: namesOfEntry(row) })),
      new Map(published.allergens.map((row) => [row.id, row])),
    ),
    restrictions: indexRows(published.restrictions.map(namedRow)),
    ifra: indexRows(published.ifra.map(namedRow)),
    listedColours: new Set(
      published.listedColours.flatMap(({ names, cas }) => [...names.map(normaliseName), ...cas]),
    ),
    lawMarkets: new Set(published.restrictions.flatMap((row) => row.rules.flatMap(({ markets }) => markets))),
    sharedCas,
    dictionary: buildNameDictionary(published, (cas) => sharedCas.has(cas)),
    materialsByName: groupBy(published.materials, namesOf),
    materialsByCas: groupBy(published.materials, ({ cas }) => cas),
    remembered: { matches: new Map(), plans: new Map() },
  };
}
