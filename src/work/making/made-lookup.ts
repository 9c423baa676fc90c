import type { CertifiedLot } from '../../check/index.ts';
import type { FormulaLine, FormulaRecipe } from '../../core/formula/index.ts';
import {
  findBatch,
  listBasesWeighedIn,
  listLotsAtHand,
  listRevisionLines,
  type Reader,
} from '../../storage/index.ts';
import { readCounting } from '../certificates/read-counting.ts';
import { formulaLinesOf, type LotLookup } from '../formulas/index.ts';
import { gramsText } from '../quantity-text.ts';
import { findOlderBases } from './older-bases.ts';
import { itemOf, type LotAmount, readWeighings, type WeighedIn } from './weighed-lookup.ts';

/**
 * The formula of a batch as its lots are, not as the formula would be made today: each base opened by the revision that
 * its lots were made by, each material by the lots that were taken of it where one of them has a certificate; undefined
 * where that is the same. A trial may be opened by a base that is one too. What is in a tin does not change when a base is written anew.
 */
export async function findMadeLookup(
  db: Reader,
  batchId: string,
  proposed?: WeighedIn,
): Promise<LotLookup | undefined> {
  const within = await listBasesWeighedIn(db, [batchId]);
  const lots = await listLotsAtHand(db, { lotIds: within.map((row) => row.lot_id) });
  const older = await findOlderBases(db, lots);
  const batch = await findBatch(db, batchId);
  const made = await openMade(db, {
    id: batchId,
    revisionId: batch?.revision_id ?? '',
    amounts: await readWeighings(db, batchId, proposed),
  });
  const isAsWritten = batch?.purpose === 'sale' && older.size === 0 && made.certified.size === 0;
  return isAsWritten ? undefined : made;
}

/** What is made, or is to be made: by which revision, of how much of which lots. */
export interface MadeOf {
  readonly id: string;
  readonly revisionId: string;
  readonly amounts: readonly LotAmount[];
}

/** The same of what no batch holds yet, such as a plan. */
export async function openMade(db: Reader, root: MadeOf): Promise<Required<LotLookup>> {
  const recipes = new Map<string, FormulaRecipe>();
  const certified = new Map<string, CertifiedLot>();
  let frontier = [root.id];
  while (frontier.length > 0) {
    const met: string[] = [];
    for (const id of frontier) {
      const made = await readMade(db, id === root.id ? root : await madeOfBatch(db, id));
      for (const recipe of made.recipes) recipes.set(recipe.formulaId, recipe);
      for (const [lotId, lot] of made.certified) certified.set(lotId, lot);
      met.push(...made.baseBatches);
    }
    frontier = [...new Set(met)].filter((id) => !recipes.has(id));
  }
  return { revision: () => recipes.get(root.id), base: (id) => recipes.get(id), certified };
}

async function madeOfBatch(db: Reader, batchId: string): Promise<MadeOf> {
  const batch = await findBatch(db, batchId);
  if (!batch) throw new Error(`there is no batch ${batchId}`);
  return { id: batchId, revisionId: batch.revision_id, amounts: await readWeighings(db, batchId) };
}

/**
 * One batch by its revision. Lots of a base, and of a material of which one lot has a certificate, count with what was
 * weighed of each, so that a base of two batches that were made by different revisions stands with both, in proportion.
 */
async function readMade(db: Reader, { id, revisionId, amounts }: MadeOf) {
  const { weighed, certified } = await readLotsWeighed(db, amounts);
  const byLots = new Set(weighed.filter((row) => row.standsByLots).map((row) => row.itemId));
  const keyOf = (itemId: string) => `${id} ${itemId}`;
  const own = formulaLinesOf(await listRevisionLines(db, [revisionId]));
  const recipes: FormulaRecipe[] = [
    { formulaId: id, name: id, lines: own.map((line) => openedAs(line, byLots, keyOf)) },
    ...[...byLots].map((itemId) => ({
      formulaId: keyOf(itemId),
      name: id,
      lines: weighed.filter((row) => row.itemId === itemId).map((row) => row.line),
    })),
  ];
  return { recipes, certified, baseBatches: weighed.flatMap((row) => row.batchId ?? []) };
}

function openedAs(
  line: FormulaLine,
  byLots: ReadonlySet<string>,
  keyOf: (itemId: string) => string,
): FormulaLine {
  const id = line.item.kind === 'base' ? line.item.formulaId : line.item.id;
  return line.item.kind === 'base' || byLots.has(id)
    ? { ...line, item: { kind: 'base', formulaId: keyOf(id) } }
    : line;
}

async function readLotsWeighed(db: Reader, weighings: readonly LotAmount[]) {
  const lotIds = [...new Set(weighings.map((row) => row.lot_id))];
  const lots = await listLotsAtHand(db, { lotIds });
  const certified = await readCounting(db, lotIds);
  const withPaper = new Set([...certified.values()].map((lot) => lot.materialId));
  const weighed = weighings.flatMap((row, index) => {
    const lot = lots.find((each) => each.id === row.lot_id);
    if (!lot) return [];
    const line: FormulaLine = {
      key: String(index),
      stage: '',
      item: itemOf(lot, certified),
      grams: gramsText(row.actual_ug),
    };
    const standsByLots = lot.batch_id !== null || withPaper.has(lot.item_id);
    return [{ itemId: lot.item_id, batchId: lot.batch_id, line, standsByLots }];
  });
  return { weighed, certified };
}
