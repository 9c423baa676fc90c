import { percentFromGrams } from '../../core/formula/index.ts';
import {
  type LotAtHand,
  listLatestRevisions,
  listRevisionLines,
  type NamedRevisionLine,
  type Reader,
} from '../../storage/index.ts';
import { formulaLinesOf } from '../formulas/index.ts';

/**
 * Lots of bases that were made differently from the base in force. Check and label open a base by its newest revision,
 * so what is made of another would carry a label that is not its own. A revision that changed only its words, or the
 * size it was written for, makes no difference.
 */
export async function findOlderBases(db: Reader, lots: readonly LotAtHand[]): Promise<ReadonlySet<string>> {
  const bases = lots.filter((lot) => lot.formula_kind === 'base' && lot.made_by !== null);
  if (bases.length === 0) return new Set();
  const newest = new Map((await listLatestRevisions(db)).map((row) => [row.formula_id, row.id]));
  const others = bases.filter((lot) => newest.get(lot.item_id) !== lot.made_by);
  if (others.length === 0) return new Set();
  const pairs = others.map((lot) => [lot.made_by ?? '', newest.get(lot.item_id) ?? ''] as const);
  const lines = await listRevisionLines(db, [...new Set(pairs.flat())]);
  const of = (revisionId: string) => lines.filter((line) => line.revision_id === revisionId);
  return new Set(
    others
      .filter((_, index) => {
        const [made, inForce] = pairs[index] ?? ['', ''];
        return !isSameComposition(of(made), of(inForce));
      })
      .map((lot) => lot.id),
  );
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
