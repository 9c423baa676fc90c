import type { FormulaLine, FormulaLookup, FormulaRecipe } from '../../core/formula/index.ts';
import { listAdditions, listBatchLines, listLotsAtHand, type Reader } from '../../storage/index.ts';
import { gramsText } from '../quantity-text.ts';

export interface WeighedIn {
  readonly position: number;
  readonly lot_id: string;
  readonly actual_ug: number;
}

/**
 * A batch as it was really weighed in, for opening like a formula: its standing additions, and each base by the batch
 * that its lot was made in. What stayed in the bowl is taken to be of the same composition as what came out. While it is
 * being made, what is not weighed in yet is taken as planned.
 */
export async function readWeighedLookup(
  db: Reader,
  batchId: string,
  proposed?: WeighedIn,
): Promise<FormulaLookup> {
  const recipes = new Map<string, FormulaRecipe>();
  let frontier = [batchId];
  while (frontier.length > 0) {
    const met: string[] = [];
    for (const id of frontier) {
      const weighings = await readWeighings(db, id, id === batchId ? proposed : undefined);
      const { recipe, baseBatches } = await readRecipe(db, id, weighings);
      recipes.set(id, recipe);
      met.push(...baseBatches);
    }
    frontier = [...new Set(met)].filter((id) => !recipes.has(id));
  }
  return { revision: () => recipes.get(batchId), base: (id) => recipes.get(id) };
}

/** What went into a batch: additions that stand, and for what is not weighed in yet the lot that is planned. */
export async function readWeighings(db: Reader, batchId: string, proposed?: WeighedIn): Promise<WeighedIn[]> {
  const standing: WeighedIn[] = (await listAdditions(db, batchId)).filter((row) => !row.is_struck);
  const known = proposed ? [...standing, proposed] : standing;
  const planned = (await listBatchLines(db, batchId)).flatMap(({ position, lot_id, target_ug }) =>
    lot_id === null || known.some((row) => row.position === position)
      ? []
      : [{ position, lot_id, actual_ug: target_ug }],
  );
  return [...known, ...planned];
}

async function readRecipe(db: Reader, batchId: string, weighings: readonly WeighedIn[]) {
  const lots = await listLotsAtHand(db, { lotIds: [...new Set(weighings.map((row) => row.lot_id))] });
  const baseBatches: string[] = [];
  const lines = weighings.map((row, index): FormulaLine => {
    const lot = lots.find((each) => each.id === row.lot_id);
    if (!lot) throw new Error(`batch ${batchId} names a lot that is not there`);
    const line = { key: String(index), stage: '', grams: gramsText(row.actual_ug) };
    if (lot.batch_id === null) return { ...line, item: { kind: 'material', id: lot.item_id } };
    baseBatches.push(lot.batch_id);
    return { ...line, item: { kind: 'base', formulaId: lot.batch_id } };
  });
  return { recipe: { formulaId: batchId, name: batchId, lines }, baseBatches };
}
