import { lowWaterTables } from '../../catalogue/index.ts';
import { type OpenedRevision, sayLowWater } from '../../check/index.ts';
import type { Saying } from '../../contract/index.ts';
import { toText } from '../../core/quantity/index.ts';
import { assessLowWater, findWaterMaterials, readLowWaterFacts } from '../../core/safety/index.ts';
import { saying } from '../saying.ts';

export interface WaterInUse {
  /** '': nobody has said. */
  readonly waterInUse: '' | 'no' | 'yes';
}

export interface WaterSaid {
  /** The answer, and what brings water in. */
  readonly says: readonly Saying[];
  readonly cautions: readonly Saying[];
}

/** Low-water assessment of a composition, with what brings water in named as the workshop calls it. */
export function sayWater(
  { details, expanded, materials }: OpenedRevision,
  { waterInUse }: WaterInUse,
): WaterSaid {
  const shares = expanded.materials.map(({ materialId, percent }) => ({
    name: materials.get(materialId)?.name ?? '',
    inciEu: materials.get(materialId)?.inciEu ?? '',
    percent: toText(percent),
  }));
  const answer = assessLowWater(
    {
      ...readLowWaterFacts(shares, details.use),
      ...(waterInUse !== '' && { canWaterComeIn: waterInUse === 'yes' }),
    },
    lowWaterTables,
  );
  const { sentence, cautions } = sayLowWater(answer);
  return { says: [sentence, nameWatery(findWaterMaterials(shares))], cautions };
}

const nameWatery = (watery: readonly { readonly name: string }[]): Saying =>
  watery.length === 0
    ? saying('pf-water-none')
    : saying('pf-water-from', { names: watery.map(({ name }) => name).join(', ') });
