import { useRead } from '../../api/use-read.ts';
import type { Choice } from '../../parts/select.tsx';

export interface ProductParts {
  readonly formulas: readonly Choice[];
  readonly tins: readonly Choice[];
  readonly lids: readonly Choice[];
  readonly labels: readonly Choice[];
}

/** What a product may be made of; undefined while it is being fetched. */
export function useParts(): ProductParts | undefined {
  const formulas = useRead('listFormulas').data;
  const materials = useRead('listMaterials').data;
  if (!formulas || !materials) return undefined;
  const ofKind = (kind: string): Choice[] =>
    materials
      .filter(({ details }) => details.packagingKind === kind)
      .map(({ id, details }) => ({ id, name: details.name }));
  return {
    formulas: formulas.map(({ id, name }) => ({ id, name })),
    tins: ofKind('tin'),
    lids: ofKind('lid'),
    labels: ofKind('label'),
  };
}
