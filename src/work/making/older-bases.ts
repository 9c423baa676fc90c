import { percentFromGrams } from '../../core/formula/index.ts';
import {
  type LotAtHand,
  listBasesWeighedIn,
  listLotsAtHand,
  listRevisionLines,
  type NamedRevisionLine,
  type Reader,
} from '../../storage/index.ts';
import { formulaLinesOf, listRevisionsInForce } from '../formulas/index.ts';

/**
 * Lots of bases that were made differently from the base in force, or with a lot of a base that was. The check
 * opens a base, and the bases in it, by the revision in force of each, so what is made of another was never judged as
 * it is. A revision that changed only its words, or the size it was written for, makes no difference.
 */
export async function findOlderBases(db: Reader, lots: readonly LotAtHand[]): Promise<ReadonlySet<string>> {
  const bases = lots.filter((lot) => lot.formula_kind === 'base' && lot.made_by !== null);
  if (bases.length === 0) return new Set();
  const inForceBy = new Map((await listRevisionsInForce(db)).map((row) => [row.formula_id, row.id]));
  const made = bases.map((lot) => [lot.made_by ?? '', inForceBy.get(lot.item_id) ?? ''] as const);
  const lines = await listRevisionLines(db, [...new Set(made.flat())]);
  const of = (revisionId: string) => lines.filter((line) => line.revision_id === revisionId);
  const isOlder = (_: LotAtHand, index: number): boolean => {
    const [by, inForce] = made[index] ?? ['', ''];
    return by !== inForce && !isSameComposition(of(by), of(inForce));
  };
  const older = bases.filter(isOlder);
  const holdsBases = (lot: LotAtHand): boolean =>
    of(lot.made_by ?? '').some((line) => line.item_kind === 'formula');
  const others = bases.filter((lot) => !older.includes(lot) && holdsBases(lot));
  return new Set([...older.map((lot) => lot.id), ...(await findMadeOfOlder(db, others))]);
}

/** Of these lots those that an older lot of a base went into, at whatever depth: a base never contains itself. */
async function findMadeOfOlder(db: Reader, lots: readonly LotAtHand[]): Promise<string[]> {
  const batchIds = lots.flatMap(({ batch_id }) => batch_id ?? []);
  if (batchIds.length === 0) return [];
  const weighed = await listBasesWeighedIn(db, batchIds);
  const within = await listLotsAtHand(db, { lotIds: [...new Set(weighed.map((row) => row.lot_id))] });
  const older = await findOlderBases(db, within);
  const touched = new Set(weighed.filter((row) => older.has(row.lot_id)).map((row) => row.batch_id));
  return lots.filter((lot) => touched.has(lot.batch_id ?? '')).map((lot) => lot.id);
}

/** Shares compared by multiplying: part x other total = other part x total, item by item. */
export function isSameComposition(
  one: readonly NamedRevisionLine[],
  other: readonly NamedRevisionLine[],
): boolean {
  const [first, second] = [sharesOf(one), sharesOf(other)];
  if (!first || !second) return false;
  const items = new Set([...first.parts.keys(), ...second.parts.keys()]);
  return [...items].every(
    (item) => (first.parts.get(item) ?? 0n) * second.total === (second.parts.get(item) ?? 0n) * first.total,
  );
}

function sharesOf(lines: readonly NamedRevisionLine[]) {
  const percents = percentFromGrams(formulaLinesOf(lines));
  if (!percents.ok) return undefined;
  const parts = new Map<string, bigint>();
  for (const [index, line] of lines.entries()) {
    parts.set(line.item_id, (parts.get(line.item_id) ?? 0n) + (percents.value.micrograms[index] ?? 0n));
  }
  return { parts, total: percents.value.total };
}
