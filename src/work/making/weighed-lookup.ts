import type { FormulaLine, FormulaLookup, FormulaRecipe } from '../../core/formula/index.ts';
import { listAdditions, listLotsAtHand, type Reader } from '../../storage/index.ts';
import { gramsText } from '../quantity-text.ts';

/**
 * A batch as it was really weighed in, for opening like a formula: its standing additions, and each base by the batch
 * that its lot was made in. What stayed in the bowl is taken to be of the same composition as what came out.
 */
export async function readWeighedLookup(db: Reader, batchId: string): Promise<FormulaLookup> {
  const recipes = new Map<string, FormulaRecipe>();
  let frontier = [batchId];
  while (frontier.length > 0) {
    const met: string[] = [];
    for (const id of frontier) {
      const { recipe, baseBatches } = await readRecipe(db, id);
      recipes.set(id, recipe);
      met.push(...baseBatches);
    }
    frontier = [...new Set(met)].filter((id) => !recipes.has(id));
  }
  return { revision: () => recipes.get(batchId), base: (id) => recipes.get(id) };
}

async function readRecipe(db: Reader, batchId: string) {
  const additions = (await listAdditions(db, batchId)).filter((row) => !row.is_struck);
  const lots = await listLotsAtHand(db, { lotIds: [...new Set(additions.map((row) => row.lot_id))] });
  const baseBatches: string[] = [];
  const lines = additions.map((row, index): FormulaLine => {
    const lot = lots.find((each) => each.id === row.lot_id);
    if (!lot) throw new Error(`addition ${row.entry_id} names no lot`);
    const line = { key: String(index), stage: '', grams: gramsText(row.actual_ug) };
    if (lot.batch_id === null) return { ...line, item: { kind: 'material', id: lot.item_id } };
    baseBatches.push(lot.batch_id);
    return { ...line, item: { kind: 'base', formulaId: lot.batch_id } };
  });
  return { recipe: { formulaId: batchId, name: batchId, lines }, baseBatches };
}
