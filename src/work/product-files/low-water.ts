import { lowWaterTables } from '../../catalogue/index.ts';
import { type OpenedRevision, sayLowWater } from '../../check/index.ts';
import type { Saying } from '../../contract/index.ts';
import { type Exact, toText, ZERO } from '../../core/quantity/index.ts';
import { assessLowWater, findWaterMaterials } from '../../core/safety/index.ts';
import { saying } from '../saying.ts';

/** What is told by label names: air-dry starches, and the one antioxidant whose level is of the whole product. */
const STARCH = /\bstarch\b|\bmaranta\b/i;
const TOCOPHEROL = /^tocopherol$/i;

export interface WaterInUse {
  /** '': nobody has said. */
  readonly waterInUse: '' | 'no' | 'yes';
}

export interface WaterSaid {
  /** The answer, and what brings water in. */
  readonly says: readonly Saying[];
  readonly cautions: readonly Saying[];
}

/** Low-water assessment of a composition: what brings water in, in the maker's words, and the published cautions. */
export function sayWater(opened: OpenedRevision, { waterInUse }: WaterInUse): WaterSaid {
  const watery = findWaterMaterials([...opened.materials.values()]);
  const starch = shareOf(opened, STARCH);
  const tocopherol = shareOf(opened, TOCOPHEROL);
  const answer = assessLowWater(
    {
      hasWaterPhase: watery.length > 0,
      ...(waterInUse !== '' && { canWaterComeIn: waterInUse === 'yes' }),
      ...(starch.gt(0) && { starchPercent: toText(starch) }),
      ...(tocopherol.gt(0) && { antioxidants: [{ id: 'tocopherol', percent: toText(tocopherol) }] }),
    },
    lowWaterTables,
  );
  const { sentence, cautions } = sayLowWater(answer);
  return { says: [sentence, nameWatery(watery)], cautions };
}

const nameWatery = (watery: readonly { readonly name: string }[]): Saying =>
  watery.length === 0
    ? saying('pf-water-none')
    : saying('pf-water-from', { names: watery.map(({ name }) => name).join(', ') });

function shareOf({ expanded, materials }: OpenedRevision, pattern: RegExp): Exact {
  return expanded.materials
    .filter(({ materialId }) => pattern.test(materials.get(materialId)?.inciEu ?? ''))
    .reduce((sum, { percent }) => sum.plus(percent), ZERO);
}
