import type { BatchLimit, MassLimit, PieceLimit } from '../../core/filling/index.ts';
import { exact, gramsFromMicrograms } from '../../core/quantity/index.ts';
import type { LotAtHand, MaterialRow } from '../../storage/index.ts';
import type { Recipe } from './read-recipe.ts';
import type { WantedTin } from './read-tins.ts';

export const sumOnHand = (lots: readonly LotAtHand[], itemId: string): number =>
  lots.reduce((sum, lot) => (lot.item_id === itemId ? sum + lot.on_hand : sum), 0);

/** Everything that bounds a batch: each material and base, the bowl, and the packaging of each product. */
export function findLimits(
  recipe: Recipe,
  lots: readonly LotAtHand[],
  tins: readonly WantedTin[],
  bowlGrams: string,
): BatchLimit[] {
  const bowl: MassLimit[] =
    bowlGrams === ''
      ? []
      : [{ kind: 'bowl', key: 'bowl', name: '', availableGrams: bowlGrams, shareOfBatch: 1 }];
  return [...massLimits(recipe, lots), ...bowl, ...pieceLimits(tins, lots)];
}

/**
 * Of what is there of an item, the batch that it suffices for: available x total / its lines. That is compared with the
 * batch itself, since a share such as a third has no end as a decimal and what just suffices must suffice.
 */
function massLimits({ lines, percents }: Recipe, lots: readonly LotAtHand[]): MassLimit[] {
  const items = new Map<string, { name: string; kind: 'material' | 'base'; parts: bigint }>();
  for (const [index, line] of lines.entries()) {
    const known = items.get(line.item_id);
    items.set(line.item_id, {
      name: line.item_name,
      kind: line.item_kind === 'formula' ? 'base' : 'material',
      parts: (known?.parts ?? 0n) + (percents.micrograms[index] ?? 0n),
    });
  }
  return [...items].map(([key, { name, kind, parts }]) => ({
    kind,
    key,
    name,
    availableGrams: gramsFromMicrograms(sumOnHand(lots, key))
      .times(exact(percents.total.toString()))
      .div(exact(parts.toString())),
    shareOfBatch: 1,
  }));
}

/** Two products may share a lid: one limit for each piece of packaging, however many products use it. */
function pieceLimits(tins: readonly WantedTin[], lots: readonly LotAtHand[]): PieceLimit[] {
  const limits = new Map<string, PieceLimit>();
  const add = (kind: PieceLimit['kind'], part: MaterialRow | undefined, productId: string) => {
    if (!part) return;
    const known = limits.get(part.id);
    limits.set(part.id, {
      kind,
      key: part.id,
      name: part.name,
      availablePieces: sumOnHand(lots, part.id),
      perUnit: { ...known?.perUnit, [productId]: 1 },
    });
  };
  for (const { productId, tin, lid, label } of tins) {
    add('tins', tin, productId);
    add('lids', lid, productId);
    add('labels', label, productId);
  }
  return [...limits.values()];
}
