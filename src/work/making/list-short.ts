import type { z } from 'zod';
import type { orders } from '../../contract/index.ts';
import { type Exact, exact, gramsFromMicrograms, roundToStep, toText } from '../../core/quantity/index.ts';
import type { LotAtHand, MaterialRow } from '../../storage/index.ts';
import { sumOnHand } from './find-limits.ts';
import type { Recipe } from './read-recipe.ts';
import type { WantedTin } from './read-tins.ts';
import type { WishSize } from './size-wish.ts';

type ShortItem = z.output<typeof orders.shortItem>;

const LEDGER_STEP_GRAMS = '0.000001';

/** What is missing for the whole wish: materials and bases in grams, packaging in pieces. */
export function listShort(
  recipe: Recipe,
  tins: readonly WantedTin[],
  lots: readonly LotAtHand[],
  size: WishSize,
): ShortItem[] {
  return [...shortMaterials(recipe, lots, size.wantedGrams), ...shortPackaging(tins, lots)];
}

/** Compared by multiplying: need = wanted x part / total is short where wanted x part > have x total. */
function shortMaterials({ lines, percents }: Recipe, lots: readonly LotAtHand[], wanted: Exact): ShortItem[] {
  const total = exact(percents.total.toString());
  const itemIds = [...new Set(lines.map((line) => line.item_id))];
  return itemIds.flatMap((itemId) => {
    const line = lines.find((candidate) => candidate.item_id === itemId);
    const part = lines.reduce(
      (sum, each, index) => (each.item_id === itemId ? sum + (percents.micrograms[index] ?? 0n) : sum),
      0n,
    );
    const have = gramsFromMicrograms(sumOnHand(lots, itemId));
    const asked = wanted.times(part.toString());
    if (!line || asked.lte(have.times(total))) return [];
    const need = asked.div(total);
    return [
      {
        itemKind: line.item_kind as 'material' | 'formula',
        itemId,
        name: line.item_name,
        need: toText(roundToStep(need, LEDGER_STEP_GRAMS, 'up')),
        have: toText(have),
        short: toText(roundToStep(need.minus(have), LEDGER_STEP_GRAMS, 'up')),
        unit: 'g' as const,
      },
    ];
  });
}

function shortPackaging(tins: readonly WantedTin[], lots: readonly LotAtHand[]): ShortItem[] {
  const needs = new Map<string, { part: MaterialRow; need: number }>();
  for (const { units, tin, lid, label } of tins) {
    for (const part of [tin, lid, label]) {
      if (part) needs.set(part.id, { part, need: (needs.get(part.id)?.need ?? 0) + units });
    }
  }
  return [...needs.values()].flatMap(({ part, need }) => {
    const have = sumOnHand(lots, part.id);
    if (need <= have) return [];
    return [
      {
        itemKind: 'material' as const,
        itemId: part.id,
        name: part.name,
        need: String(need),
        have: String(have),
        short: String(need - have),
        unit: 'pieces' as const,
      },
    ];
  });
}
