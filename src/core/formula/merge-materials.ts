import type { ExpandedFormula } from './expand-formula.ts';
import { divideBy } from './whole-ratio.ts';

/**
 * The same formula with its shares added up by another name: lots that stand by themselves come together as the material
 * that they are lots of. Exact, on the formula's own denominator; in the order in which each is met first.
 */
export function mergeMaterials(
  { materials, whole }: ExpandedFormula,
  materialOf: (id: string) => string,
): ExpandedFormula {
  const parts = new Map<string, bigint>();
  for (const share of materials) {
    const id = materialOf(share.materialId);
    parts.set(id, (parts.get(id) ?? 0n) + share.parts);
  }
  const toPercent = divideBy(whole);
  return {
    materials: [...parts].map(([materialId, sum]) => ({
      materialId,
      parts: sum,
      percent: toPercent(sum * 100n),
    })),
    whole,
  };
}
