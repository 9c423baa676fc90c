import { doubted, foundRows, isSameSet, type Match } from './match.ts';
import type { RowIndex } from './row-index.ts';
import type { SharedCasRow } from './safety-table-rows.ts';
import { rowsAllowing, type SubstanceKind } from './substance-kind.ts';

type SharedMaterial = NonNullable<SharedCasRow['materials']>[number];

const EXTRACTING = ['extract', 'distilled', 'absolute', 'concrete', 'co2'];

/** Told where the substance has what tells the materials of the number apart; a material that has none is "any other". */
function fits(
  material: SharedMaterial,
  kind: SubstanceKind,
  tellApartBy: readonly string[],
): boolean | 'else' {
  if (tellApartBy.includes('plantPart')) {
    return material.plantPart === undefined ? 'else' : material.plantPart === kind.plantPart;
  }
  if (material.form !== undefined) {
    const isCrude = material.form.startsWith('crude');
    return isCrude ? kind.process === 'crude' : EXTRACTING.includes(kind.process ?? '');
  }
  return material.process === undefined ? 'else' : material.process === kind.process;
}

/** A form says how it was won: a crude exudation, or an extract or distillate of it. */
function kindOfMaterial(
  { plantPart, process, form }: SharedMaterial,
  { origin }: SubstanceKind,
): SubstanceKind {
  const won = form?.startsWith('crude') ? 'crude' : form === undefined ? undefined : 'extract';
  return { plantPart, process: process ?? won, origin };
}

function toldMaterials(
  materials: readonly SharedMaterial[],
  kind: SubstanceKind,
  tellApartBy: readonly string[],
): readonly SharedMaterial[] {
  const exact = materials.filter((material) => fits(material, kind, tellApartBy) === true);
  return exact.length > 0 ? exact : materials.filter((row) => fits(row, kind, tellApartBy) === 'else');
}

/**
 * Rows of a CAS number that several materials share: it never decides alone. It decides where plant part or process
 * tell the materials apart, or where all of them lead to the same rows.
 */
export function matchSharedCas<Row extends { readonly id: string }>(
  index: RowIndex<Row>,
  cas: string,
  shared: readonly SharedCasRow[],
  kind: SubstanceKind,
): Match<Row> {
  const candidates = index.byCas.get(cas) ?? [];
  const mayBe = candidates.map(({ row }) => row);
  if (mayBe.length === 0) return foundRows([]);
  const tellApartBy = [...new Set(shared.flatMap((row) => row.tellApartBy))];
  const materials = shared.flatMap((row) => row.materials ?? []);
  const rowsOf = (material: SharedMaterial): Row[] =>
    index.byEntryId === undefined
      ? rowsAllowing(candidates, kindOfMaterial(material, kind))
      : mayBe.filter(({ id }) => id === material.allergenEntryId);
  const isTold = tellApartBy.includes('plantPart') ? kind.plantPart : kind.process;
  if (isTold === undefined || tellApartBy.includes('name')) {
    const [first = mayBe, ...others] = materials.map(rowsOf);
    const leadsOneWay = materials.length > 0 && others.every((rows) => isSameSet(rows, first));
    return leadsOneWay ? foundRows(first) : doubted('shared-cas', mayBe, tellApartBy);
  }
  const told = toldMaterials(materials, kind, tellApartBy);
  const allowed = rowsAllowing(candidates, kind);
  if (index.byEntryId !== undefined) return foundRows(told[0] === undefined ? allowed : rowsOf(told[0]));
  const isProhibited = told.some(({ prohibitedEntry }) => prohibitedEntry !== undefined);
  return allowed.length === 0 && isProhibited
    ? doubted('may-be-prohibited', mayBe, tellApartBy)
    : foundRows(allowed);
}
