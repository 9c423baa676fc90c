import type { formulas, stock } from '../../contract/index.ts';
import { type FormulaPercents, percentFromGrams } from '../../core/formula/index.ts';
import { done, type Result, refused } from '../../core/problem.ts';
import {
  type FormulaRow,
  findFormula,
  findMaterials,
  findRevision,
  listRevisionLines,
  type NamedRevisionLine,
  type Reader,
} from '../../storage/index.ts';
import { formulaLinesOf } from '../formulas/index.ts';
import { thingNotFound } from '../record.ts';

/** A revision as the planning of a batch needs it: its lines in percent, and what is known of its materials. */
export interface Recipe {
  readonly revisionId: string;
  /** Of the revision. */
  readonly number: number;
  readonly formula: FormulaRow;
  readonly details: formulas.RevisionDetails;
  readonly lines: readonly NamedRevisionLine[];
  readonly percents: FormulaPercents;
  readonly materials: ReadonlyMap<string, stock.MaterialDetails>;
}

export async function readRecipe(db: Reader, revisionId: string): Promise<Result<Recipe>> {
  const revision = await findRevision(db, revisionId);
  if (!revision) return refused(thingNotFound('revisionId', revisionId));
  const formula = await findFormula(db, revision.formula_id);
  if (!formula) return refused(thingNotFound('formulaId', revision.formula_id));
  const lines = await listRevisionLines(db, [revisionId]);
  const percents = percentFromGrams(formulaLinesOf(lines));
  if (!percents.ok) return percents;
  const materials = await findMaterials(
    db,
    lines.filter((line) => line.item_kind === 'material').map((line) => line.item_id),
  );
  return done({
    revisionId,
    number: revision.number,
    formula,
    details: JSON.parse(revision.details) as formulas.RevisionDetails,
    lines,
    percents: percents.value,
    materials: new Map(materials.map((row) => [row.id, JSON.parse(row.details) as stock.MaterialDetails])),
  });
}
