import { doubted, foundRows, isSameSet, type Match } from './match.ts';
import { matchKnownMaterials } from './match-known-materials.ts';
import type { DictionaryEntry } from './name-dictionary.ts';
import type { RowIndex } from './row-index.ts';
import type { SafetyTables } from './safety-tables.ts';
import { rowsAllowing, type SubstanceKind } from './substance-kind.ts';

const TELL_APART_BY = ['plantPart', 'process', 'name'];

/**
 * Rows of a name that this table does not print and another one does: by the CAS numbers that stand beside it there, else
 * by the other names there. Numbers that are given say which of them it is. Where a known material of one of the numbers
 * leads elsewhere than the rest, or the names lead several ways, it is in doubt. Nothing where they lead nowhere.
 */
export function matchDictionary<Row>(
  index: RowIndex<Row>,
  tables: SafetyTables,
  entries: readonly DictionaryEntry[],
  given: { readonly kind: SubstanceKind; readonly cas: readonly string[] },
): Match<Row> | undefined {
  const isGiven = (cas: string): boolean => given.cas.includes(cas);
  const isTold = entries.some(({ cas }) => cas.some(isGiven));
  const own = [...new Set(entries.flatMap(({ ownCas }) => ownCas))];
  const byNumber = matchNumbers(index, tables, isTold ? own.filter(isGiven) : own, given.kind);
  if (byNumber !== undefined || isTold) return byNumber;
  const ways = entries
    .flatMap(({ names }) => names)
    .map((name) => rowsAllowing(index.byName.get(name) ?? [], given.kind));
  return joinWays(ways.filter((rows) => rows.length > 0));
}

/** What the numbers lead to together, unless a known material of one of them says otherwise. */
function matchNumbers<Row>(
  index: RowIndex<Row>,
  tables: SafetyTables,
  numbers: readonly string[],
  kind: SubstanceKind,
): Match<Row> | undefined {
  const rows = new Set<Row>();
  const ofMaterials: Match<Row>[] = [];
  for (const cas of numbers) {
    const listed = index.byCas.get(cas);
    const materials = tables.materialsByCas.get(cas);
    for (const row of rowsAllowing(listed ?? [], kind)) rows.add(row);
    if (listed === undefined && materials !== undefined)
      ofMaterials.push(
        matchKnownMaterials(index, materials, { ...kind, cas }, isShared(tables), 'shared-cas'),
      );
  }
  for (const match of ofMaterials) for (const row of match.rows) rows.add(row);
  if (rows.size === 0) return undefined;
  const all = [...rows];
  const agree = ofMaterials.every((match) => match.kind === 'rows' && isSameSet(match.rows, all));
  return agree ? foundRows(all) : doubted('ambiguous-name', all, TELL_APART_BY);
}

const isShared =
  ({ sharedCas }: SafetyTables) =>
  (cas: string): boolean =>
    sharedCas.has(cas);

function joinWays<Row>(ways: readonly (readonly Row[])[]): Match<Row> | undefined {
  const [first] = ways;
  if (first === undefined) return undefined;
  return ways.every((rows) => isSameSet(rows, first))
    ? foundRows(first)
    : doubted('ambiguous-name', [...new Set(ways.flat())], TELL_APART_BY);
}
