import type { CertifiedLot } from '../../check/index.ts';
import type { FormulaLine, FormulaRecipe } from '../../core/formula/index.ts';
import {
  type LotAtHand,
  listAdditions,
  listBatchLines,
  listLotsAtHand,
  type Reader,
} from '../../storage/index.ts';
import { readCounting } from '../certificates/read-counting.ts';
import type { LotLookup } from '../formulas/index.ts';
import { gramsText } from '../quantity-text.ts';
import { weighState } from './weigh-state.ts';

/** What of a lot is in, or is to go in. */
export interface LotAmount {
  readonly lot_id: string;
  readonly actual_ug: number;
}

export interface WeighedIn extends LotAmount {
  readonly position: number;
  /** Of what is proposed: more of it is to come. */
  readonly isPart?: boolean;
}

/**
 * A batch as it was really weighed in, for opening like a formula: its standing additions, each lot that has a
 * certificate by itself, and each base by the batch
 * that its lot was made in. What stayed in the bowl is taken to be of the same composition as what came out. While it is
 * being made, what is not weighed in yet is taken as planned.
 */
export async function readWeighedLookup(
  db: Reader,
  batchId: string,
  proposed?: WeighedIn,
): Promise<Required<LotLookup>> {
  const recipes = new Map<string, FormulaRecipe>();
  const certified = new Map<string, CertifiedLot>();
  let frontier = [batchId];
  while (frontier.length > 0) {
    const met: string[] = [];
    for (const id of frontier) {
      const weighings = await readWeighings(db, id, id === batchId ? proposed : undefined);
      const opened = await readRecipe(db, id, weighings);
      recipes.set(id, opened.recipe);
      for (const [lotId, lot] of opened.certified) certified.set(lotId, lot);
      met.push(...opened.baseBatches);
    }
    frontier = [...new Set(met)].filter((id) => !recipes.has(id));
  }
  return { revision: () => recipes.get(batchId), base: (id) => recipes.get(id), certified };
}

/**
 * What went into a batch: additions that stand, and what is not weighed in yet, or not all of it, of the lot that is
 * planned. What is proposed counts as all of its position, unless it is said to be a part.
 */
export async function readWeighings(db: Reader, batchId: string, proposed?: WeighedIn): Promise<WeighedIn[]> {
  const additions = await listAdditions(db, batchId);
  const standing = additions.filter((row) => !row.is_struck);
  const planned = (await listBatchLines(db, batchId)).flatMap((line): WeighedIn[] => {
    const { position, lot_id, target_ug } = line;
    const state = weighState(line, additions);
    const isProposed = proposed?.position === position;
    if (isProposed && !proposed.isPart) return [];
    const withIt = isProposed ? target_ug - state.inUg - proposed.actual_ug : state.leftUg;
    return withIt > 0 ? [{ position, lot_id, actual_ug: withIt }] : [];
  });
  // Of what is closed nothing more comes.
  const isMore = proposed !== undefined && proposed.actual_ug > 0;
  return [...standing, ...(isMore ? [proposed] : []), ...planned];
}

async function readRecipe(db: Reader, batchId: string, weighings: readonly LotAmount[]) {
  const lotIds = [...new Set(weighings.map((row) => row.lot_id))];
  const lots = await listLotsAtHand(db, { lotIds });
  const certified = await readCounting(db, lotIds);
  const baseBatches: string[] = [];
  const lines = weighings.map((row, index): FormulaLine => {
    const lot = lots.find((each) => each.id === row.lot_id);
    if (!lot) throw new Error(`batch ${batchId} names a lot that is not there`);
    if (lot.batch_id !== null) baseBatches.push(lot.batch_id);
    return { key: String(index), stage: '', item: itemOf(lot, certified), grams: gramsText(row.actual_ug) };
  });
  return { recipe: { formulaId: batchId, name: batchId, lines }, baseBatches, certified };
}

/** A lot made here stands for what it was made of, one with a certificate for itself, any other for its material. */
export const itemOf = (
  lot: Pick<LotAtHand, 'id' | 'batch_id' | 'item_id'>,
  certified: ReadonlyMap<string, CertifiedLot>,
): FormulaLine['item'] => {
  if (lot.batch_id !== null) return { kind: 'base', formulaId: lot.batch_id };
  return { kind: 'material', id: certified.has(lot.id) ? lot.id : lot.item_id };
};
