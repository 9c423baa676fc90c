import type { FormulaLine, FormulaLookup, FormulaRecipe } from '../../core/formula/index.ts';
import {
  findBatch,
  listBasesWeighedIn,
  listLotsAtHand,
  listRevisionLines,
  type Reader,
} from '../../storage/index.ts';
import { formulaLinesOf } from '../formulas/index.ts';
import { gramsText } from '../quantity-text.ts';
import { findOlderBases } from './older-bases.ts';
import { readWeighings } from './weighed-lookup.ts';

/**
 * The formula of a batch with each base opened by the revision that its lots were made by, not by the one in force;
 * undefined where that is the same composition. A trial may be opened by a base that is one too. What is in a tin does not change when a base is written anew.
 */
export async function findMadeLookup(db: Reader, batchId: string): Promise<FormulaLookup | undefined> {
  const within = await listBasesWeighedIn(db, [batchId]);
  const lots = await listLotsAtHand(db, { lotIds: within.map((row) => row.lot_id) });
  const older = await findOlderBases(db, lots);
  const batch = await findBatch(db, batchId);
  return batch?.purpose === 'sale' && older.size === 0 ? undefined : readMadeLookup(db, batchId);
}

async function readMadeLookup(db: Reader, batchId: string): Promise<FormulaLookup> {
  const recipes = new Map<string, FormulaRecipe>();
  let frontier = [batchId];
  while (frontier.length > 0) {
    const met: string[] = [];
    for (const id of frontier) {
      const made = await readMade(db, id);
      for (const recipe of made.recipes) recipes.set(recipe.formulaId, recipe);
      met.push(...made.baseBatches);
    }
    frontier = [...new Set(met)].filter((id) => !recipes.has(id));
  }
  return { revision: () => recipes.get(batchId), base: (id) => recipes.get(id) };
}

/**
 * One batch by its revision. Lots of a base count with what was weighed of each, so that a base of two batches that were
 * made by different revisions stands with both, in proportion.
 */
async function readMade(db: Reader, batchId: string) {
  const batch = await findBatch(db, batchId);
  if (!batch) throw new Error(`there is no batch ${batchId}`);
  const bases = await readBasesWeighed(db, batchId);
  const keyOf = (formulaId: string) => `${batchId} ${formulaId}`;
  const own = formulaLinesOf(await listRevisionLines(db, [batch.revision_id]));
  const recipes: FormulaRecipe[] = [
    { formulaId: batchId, name: batch.number, lines: own.map((line) => openedAs(line, keyOf)) },
    ...[...new Set(bases.map((row) => row.formulaId))].map((formulaId) => ({
      formulaId: keyOf(formulaId),
      name: batch.number,
      lines: bases.filter((row) => row.formulaId === formulaId).map((row) => row.line),
    })),
  ];
  return { recipes, baseBatches: bases.map((row) => row.batchId) };
}

const openedAs = (line: FormulaLine, keyOf: (formulaId: string) => string): FormulaLine =>
  line.item.kind === 'base'
    ? { ...line, item: { kind: 'base', formulaId: keyOf(line.item.formulaId) } }
    : line;

async function readBasesWeighed(db: Reader, batchId: string) {
  const weighings = await readWeighings(db, batchId);
  const lots = await listLotsAtHand(db, { lotIds: [...new Set(weighings.map((row) => row.lot_id))] });
  return weighings.flatMap((row, index) => {
    const lot = lots.find((each) => each.id === row.lot_id);
    if (!lot?.batch_id) return [];
    const line: FormulaLine = {
      key: String(index),
      stage: '',
      item: { kind: 'base', formulaId: lot.batch_id },
      grams: gramsText(row.actual_ug),
    };
    return [{ formulaId: lot.item_id, batchId: lot.batch_id, line }];
  });
}
