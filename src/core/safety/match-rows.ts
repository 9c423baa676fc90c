import { type SafetyTables, substanceKey } from './build-safety-tables.ts';
import { doubted, foundRows, type Match } from './match.ts';
import { matchKnownMaterials } from './match-known-materials.ts';
import { matchSharedCas } from './match-shared-cas.ts';
import { normaliseName, readNameHints } from './read-name.ts';
import type { RowIndex } from './row-index.ts';
import type { AllergenRow, IfraRow, RestrictionRow } from './safety-table-rows.ts';
import type { Substance } from './substance.ts';
import { areApart, rowsAllowing } from './substance-kind.ts';

/** A workshop's materials are a few hundred; the bound only keeps a long-lived process from growing. */
const REMEMBERED_AT_MOST = 20_000;

/**
 * The rows of a table that a substance belongs to: by name first, then by the names that known materials go by, then
 * by CAS, the table's or a known material's. Plant part and process exclude rows that they contradict; a shared CAS number never decides alone.
 */
function findRows<Row extends { readonly id: string }>(
  index: RowIndex<Row>,
  tables: SafetyTables,
  substance: Substance,
): Match<Row> {
  const name = normaliseName(substance.name);
  const hints = readNameHints(name);
  const printed = index.byName.get(name) ?? [];
  const byCas = substance.cas === undefined ? [] : (index.byCas.get(substance.cas) ?? []);
  if (areApart(hints, substance)) {
    const mayBe = [...new Set([...printed, ...byCas].map(({ row }) => row))];
    return mayBe.length === 0 ? foundRows([]) : doubted('name-contradicts-fields', mayBe, ['name']);
  }
  const byName = rowsAllowing(printed, substance);
  if (byName.length > 0) return foundRows(byName);
  const kind = { ...hints, ...withoutUndefined(substance) };
  const isShared = (cas: string): boolean => tables.sharedCas.has(cas);
  const given = { ...kind, cas: substance.cas };
  const named = tables.materialsByName.get(name);
  if (named !== undefined) return matchKnownMaterials(index, named, given, isShared, 'ambiguous-name');
  if (substance.cas === undefined) return foundRows([]);
  const shared = tables.sharedCas.get(substance.cas);
  if (shared !== undefined) return matchSharedCas(index, substance.cas, shared, kind);
  if (byCas.length > 0) return foundRows(rowsAllowing(byCas, kind));
  const numbered = tables.materialsByCas.get(substance.cas) ?? [];
  return matchKnownMaterials(index, numbered, given, isShared, 'shared-cas');
}

function withoutUndefined({ plantPart, process, origin }: Substance): Partial<Substance> {
  return {
    ...(plantPart !== undefined && { plantPart }),
    ...(process !== undefined && { process }),
    ...(origin !== undefined && { origin }),
  };
}

/** Where a substance belongs in each of the tables. */
export interface SubstanceMatches {
  readonly allergens: Match<AllergenRow>;
  readonly restrictions: Match<RestrictionRow>;
  readonly ifra: Match<IfraRow>;
}

/** The same substance met again is not looked up again. */
export function matchRows(tables: SafetyTables, substance: Substance): SubstanceMatches {
  const { matches } = tables.remembered;
  const key = substanceKey(substance);
  const known = matches.get(key);
  if (known !== undefined) return known;
  const found: SubstanceMatches = {
    allergens: findRows(tables.allergens, tables, substance),
    restrictions: findRows(tables.restrictions, tables, substance),
    ifra: findRows(tables.ifra, tables, substance),
  };
  if (matches.size >= REMEMBERED_AT_MOST) matches.clear();
  matches.set(key, found);
  return found;
}
