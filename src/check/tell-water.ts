import { lowWaterTables } from '../catalogue/index.ts';
import { type Saying, saying } from '../contract/index.ts';
import { toText } from '../core/quantity/index.ts';
import { assessLowWater, findWaterMaterials, readLowWaterFacts } from '../core/safety/index.ts';
import type { OpenedRevision } from './checked.ts';
import { sayLowWater } from './say-low-water.ts';

export interface WaterSaid {
  /** The answer, and what brings water in. */
  readonly says: readonly Saying[];
  readonly cautions: readonly Saying[];
}

/**
 * Low-water assessment of a composition, with what brings water in named as the workshop calls it. `waterInUse`: what a
 * person said of its use; '': nobody has, and what is washed off is taken to be used where water comes in.
 */
export function tellWater(
  { details, expanded, materials }: Pick<OpenedRevision, 'details' | 'expanded' | 'materials'>,
  waterInUse: '' | 'no' | 'yes' = '',
): WaterSaid {
  const shares = expanded.materials.map(({ materialId, percent }) => ({
    name: materials.get(materialId)?.name ?? '',
    inciEu: materials.get(materialId)?.inciEu ?? '',
    percent: toText(percent),
  }));
  const told = waterInUse === '' ? {} : { canWaterComeIn: waterInUse === 'yes' };
  const answer = assessLowWater({ ...readLowWaterFacts(shares, details.use), ...told }, lowWaterTables);
  const { sentence, cautions } = sayLowWater(answer);
  return { says: [sentence, nameWatery(findWaterMaterials(shares))], cautions };
}

const nameWatery = (watery: readonly { readonly name: string }[]): Saying =>
  watery.length === 0
    ? saying('pf-water-none')
    : saying('pf-water-from', { names: watery.map(({ name }) => name).join(', ') });
