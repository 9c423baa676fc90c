import { type CertifiedLot, type OpenedRevision, openComposition } from '../../check/index.ts';
import { expandFormula, type FormulaLookup } from '../../core/formula/index.ts';
import { type Result, refused } from '../../core/problem.ts';
import {
  findFormula,
  findMaterials,
  findRevision,
  listRevisionLines,
  type Reader,
} from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';
import { type MaterialDetails, viewMaterials } from '../stock/material-view.ts';
import { readFormulaLookup } from './formula-lookup.ts';

/** What really went in: lots with a certificate stand in it by themselves, each under the id that it has here. */
export interface LotLookup extends FormulaLookup {
  readonly certified?: ReadonlyMap<string, CertifiedLot>;
}

/** `weighed`: what really went in, where a batch is judged instead of the formula. */
export async function openRevision(
  db: Reader,
  revisionId: string,
  weighed?: LotLookup,
): Promise<Result<OpenedRevision>> {
  const revision = await findRevision(db, revisionId);
  const formula = revision && (await findFormula(db, revision.formula_id));
  if (!revision || !formula) return refused(thingNotFound('id', revisionId));
  const lookup = weighed ?? (await readFormulaLookup(db, { revisionId }));
  const expanded = expandFormula(revisionId, lookup);
  if (!expanded.ok) return expanded;
  const certified = weighed?.certified ?? new Map<string, CertifiedLot>();
  const ids = expanded.value.materials.map(({ materialId: id }) => certified.get(id)?.materialId ?? id);
  const lines = await listRevisionLines(db, [revisionId]);
  return openComposition({
    revision,
    details: JSON.parse(revision.details) as OpenedRevision['details'],
    formula,
    baseIds: lines.filter((line) => line.item_kind === 'formula').map((line) => line.item_id),
    expanded: expanded.value,
    materials: await readMaterials(db, [...new Set(ids)]),
    certified,
  });
}

async function readMaterials(db: Reader, ids: readonly string[]): Promise<Map<string, MaterialDetails>> {
  const views = await viewMaterials(db, await findMaterials(db, ids));
  return new Map(views.map((view) => [view.id, view.details]));
}
