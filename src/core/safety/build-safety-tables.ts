import type { SubstanceMatches } from './match-rows.ts';
import type { LimitPlan } from './plan-limits.ts';
import { normaliseName } from './read-name.ts';
import { indexRows, type Recognised, type RowIndex } from './row-index.ts';
import type {
  AllergenRow,
  IfraRow,
  KnownMaterialRow,
  PublishedSafetyTables,
  RestrictionRow,
  SharedCasRow,
} from './safety-table-rows.ts';
import type { Substance } from './substance.ts';

/** The published tables with their indexes, and what has been looked up in them before. Build once, judge often. */
export interface SafetyTables {
  readonly allergens: RowIndex<AllergenRow>;
  readonly restrictions: RowIndex<RestrictionRow>;
  readonly ifra: RowIndex<IfraRow>;
  readonly sharedCas: ReadonlyMap<string, readonly SharedCasRow[]>;
  readonly materialsByName: ReadonlyMap<string, readonly KnownMaterialRow[]>;
  readonly materialsByCas: ReadonlyMap<string, readonly KnownMaterialRow[]>;
  /** Remembered answers: the same substance met again is not looked up again. */
  readonly remembered: {
    readonly matches: Map<string, SubstanceMatches>;
    readonly plans: Map<string, Map<RestrictionRow, LimitPlan>>;
  };
}

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

const namesOf = (material: KnownMaterialRow): string[] =>
  [material.name, material.inciEu, ...(material.aliases ?? [])].map(normaliseName);

export function buildSafetyTables(published: PublishedSafetyTables): SafetyTables {
  return {
    allergens: indexRows(
      published.allergens.map((row) => ({ row, ...row.match, names: [row.labelName, ...row.match.names] })),
      new Map(published.allergens.map((row) => [row.id, row])),
    ),
    restrictions: indexRows(published.restrictions.map(namedRow)),
    ifra: indexRows(published.ifra.map(namedRow)),
    sharedCas: groupBy(published.sharedCas, (row) => [row.cas]),
    materialsByName: groupBy(published.materials, namesOf),
    materialsByCas: groupBy(published.materials, ({ cas }) => cas),
    remembered: { matches: new Map(), plans: new Map() },
  };
}

const listKey = (more: readonly string[] | undefined): string => (more === undefined ? '' : more.join('+'));

export const substanceKey = (one: Substance): string =>
  `${one.name}|${one.cas ?? ''}|${one.plantPart ?? ''}|${one.process ?? ''}|${one.origin ?? ''}|${listKey(one.alsoNames)}|${listKey(one.alsoCas)}`;
