import { doubted, foundRows, joinMatches, type Match } from './match.ts';
import { matchDictionary } from './match-dictionary.ts';
import { matchKnownMaterials } from './match-known-materials.ts';
import { matchSharedCas } from './match-shared-cas.ts';
import { normaliseName, readNameHints } from './read-name.ts';
import type { RowIndex } from './row-index.ts';
import type { KnownMaterialRow } from './safety-table-rows.ts';
import type { SafetyTables, SubstanceMatches } from './safety-tables.ts';
import { numbersOfSubstance, type Substance, substanceKey } from './substance.ts';
import { areApart, rowsAllowing, type SubstanceKind } from './substance-kind.ts';

/** A workshop's materials are a few hundred; the bound only keeps a long-lived process from growing. */
const REMEMBERED_AT_MOST = 20_000;

/** What one name says, with plant part and process; nothing where no table knows the name. */
function findByName<Row>(
  index: RowIndex<Row>,
  tables: SafetyTables,
  substance: Substance,
): Match<Row> | undefined {
  const name = normaliseName(substance.name);
  const hints = readNameHints(name);
  const printed = index.byName.get(name) ?? [];
  if (areApart(hints, substance)) {
    const byCas = numbersOfSubstance(substance).flatMap((cas) => index.byCas.get(cas) ?? []);
    const mayBe = [...new Set([...printed, ...byCas].map(({ row }) => row))];
    return mayBe.length === 0 ? foundRows([]) : doubted('name-contradicts-fields', mayBe, ['name']);
  }
  const byName = rowsAllowing(printed, substance);
  if (byName.length > 0) return foundRows(byName);
  const named = tables.materialsByName.get(name);
  if (named === undefined) {
    const entries = printed.length > 0 ? undefined : tables.dictionary.get(name);
    const kind = { ...hints, ...withoutUndefined(substance) };
    return entries && matchDictionary(index, tables, entries, { kind, cas: numbersOfSubstance(substance) });
  }
  const given = { ...hints, ...withoutUndefined(substance), cas: substance.cas };
  return matchKnownMaterials(index, named, given, (cas) => tables.sharedCas.has(cas), 'ambiguous-name');
}

/** What one CAS number says, with plant part and process of the fields or the name. */
function findByNumber<Row extends { readonly id: string }>(
  index: RowIndex<Row>,
  tables: SafetyTables,
  cas: string,
  kind: SubstanceKind,
): Match<Row> {
  const shared = tables.sharedCas.get(cas);
  if (shared !== undefined) return matchSharedCas(index, cas, shared, kind);
  const byCas = index.byCas.get(cas) ?? [];
  if (byCas.length > 0) return foundRows(rowsAllowing(byCas, kind));
  const numbered = tables.materialsByCas.get(cas) ?? [];
  const isShared = (number: string): boolean => tables.sharedCas.has(number);
  return matchKnownMaterials(index, numbered, { ...kind, cas }, isShared, 'shared-cas');
}

/**
 * The rows of a table that a substance belongs to: by name first, then by the names that known materials go by, then
 * by what other tables print beside the name, then by CAS, the table's or a known material's. Plant part and process exclude rows that they contradict; a shared CAS
 * number never decides alone. What its other names and numbers tell is taken together with it, and what they leave in
 * doubt stays in doubt, unless a name settles it (see isSettledBy).
 */
function findRows<Row extends { readonly id: string }>(
  index: RowIndex<Row>,
  tables: SafetyTables,
  substance: Substance,
): Match<Row> {
  const { alsoNames = [], alsoCas = [] } = substance;
  const names = [substance.name, ...alsoNames].flatMap((name) => {
    const match = findByName(index, tables, { ...substance, name });
    return match === undefined ? [] : [{ match, materials: materialsCalled(tables, name) }];
  });
  const told = names.filter(({ match }) => match.kind === 'rows');
  const kind = { ...readNameHints(normaliseName(substance.name)), ...withoutUndefined(substance) };
  const numbers = (told.length > 0 ? alsoCas : numbersOfSubstance(substance)).map((cas) => ({
    match: findByNumber(index, tables, cas, kind),
    materials: tables.materialsByCas.get(cas) ?? [],
  }));
  const counting = [...names, ...numbers].filter(
    (finding) => finding.match.kind === 'rows' || !told.some((one) => isSettledBy(finding, one)),
  );
  return joinMatches(counting.map(({ match }) => match));
}

interface Finding<Row> {
  readonly match: Match<Row>;
  /** Known materials that go by the name, or by the number. */
  readonly materials: readonly KnownMaterialRow[];
}

const materialsCalled = (tables: SafetyTables, name: string): readonly KnownMaterialRow[] =>
  tables.materialsByName.get(normaliseName(name)) ?? [];

/**
 * A name settles a doubt about what it names itself: one of the rows that it may be, or one of the known materials that
 * the doubtful name or number stands for. A name for anything, such as Parfum, settles nothing.
 */
function isSettledBy<Row>(doubt: Finding<Row>, told: Finding<Row>): boolean {
  const { rows } = told.match;
  const mayBe = doubt.match.kind === 'unknown' ? doubt.match.mayBe : [];
  return (
    mayBe.some((row) => rows.includes(row)) ||
    doubt.materials.some((material) => told.materials.includes(material))
  );
}

function withoutUndefined({ plantPart, process, origin }: Substance): Partial<Substance> {
  return {
    ...(plantPart !== undefined && { plantPart }),
    ...(process !== undefined && { process }),
    ...(origin !== undefined && { origin }),
  };
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
