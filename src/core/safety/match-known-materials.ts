import { doubted, foundRows, isSameSet, type Match, type MatchDoubt } from './match.ts';
import { normaliseName } from './read-name.ts';
import type { RowIndex } from './row-index.ts';
import type { KnownMaterialRow } from './safety-table-rows.ts';
import { areApart, rowsAllowing, type SubstanceKind } from './substance-kind.ts';

function rowsOfMaterial<Row>(
  index: RowIndex<Row>,
  material: KnownMaterialRow,
  given: SubstanceKind,
  ownCas: readonly string[],
): Row[] {
  const kind = {
    plantPart: given.plantPart ?? material.plantPart,
    process: given.process ?? material.process,
    origin: given.origin,
  };
  const names = [material.name, material.inciEu, ...(material.aliases ?? [])].map(normaliseName);
  const candidates = [
    ...names.flatMap((name) => index.byName.get(name) ?? []),
    ...ownCas.flatMap((cas) => index.byCas.get(cas) ?? []),
  ];
  const entry = index.byEntryId?.get(material.allergenEntryId ?? '');
  return [...new Set([...rowsAllowing(candidates, kind), ...(entry === undefined ? [] : [entry])])];
}

/**
 * A name or number that the table does not print itself, but that known materials go by: rows of those materials, by
 * their names and by the CAS numbers, theirs and the given one, that no other material shares.
 */
export function matchKnownMaterials<Row>(
  index: RowIndex<Row>,
  named: readonly KnownMaterialRow[],
  given: SubstanceKind & { readonly cas?: string | undefined },
  isSharedCas: (cas: string) => boolean,
  doubt: MatchDoubt,
): Match<Row> {
  const fitting = named.filter((material) => !areApart(material, given));
  const ways = (fitting.length > 0 ? fitting : named).map((material) => {
    const cas = given.cas === undefined ? material.cas : [...material.cas, given.cas];
    return rowsOfMaterial(
      index,
      material,
      given,
      cas.filter((number) => !isSharedCas(number)),
    );
  });
  const [first = []] = ways;
  return ways.every((rows) => isSameSet(rows, first))
    ? foundRows(first)
    : doubted(doubt, [...new Set(ways.flat())], ['plantPart', 'process', 'name']);
}
