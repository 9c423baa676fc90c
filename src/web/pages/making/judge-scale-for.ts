import { scaleTables } from '../../../catalogue/index.ts';
import { exact, roundToStep, toText } from '../../../core/quantity/index.ts';
import { findScaleFor, findWorstErrorGrams, type Scale as KnownScale } from '../../../core/weighing/index.ts';
import type { Scale } from '../workshop/workshop.ts';
import type { Band } from './weigh-band.ts';

/** What a scale is good for in one weighing. */
export type ScaleFit =
  | { readonly is: 'good' | 'held' | 'too-small' }
  /** It weighs this less well than the band asks for. */
  | { readonly is: 'coarse'; readonly errorGrams: string | null };

/** Whether one may weigh within the band on a scale: it passed its check, it holds that much, it repeats well enough. */
export function judgeScaleFor(scale: Scale, { targetGrams, highGrams }: Band): ScaleFit {
  if (scale.check?.isHeld === true) return { is: 'held' };
  if (exact(targetGrams).gt(scale.capacityGrams)) return { is: 'too-small' };
  const known = knownOf(scale);
  const room = exact(highGrams).minus(targetGrams);
  if (!exact(targetGrams).gt(0) || !room.gt(0)) return { is: 'good' };
  if (findScaleFor(targetGrams, [known], room.div(targetGrams), scaleTables)) return { is: 'good' };
  const error = findWorstErrorGrams(known, targetGrams, scaleTables);
  return {
    is: 'coarse',
    errorGrams: error.ok ? toText(roundToStep(error.value, scale.readabilityGrams, 'up')) : null,
  };
}

const knownOf = ({ repeatability, ...scale }: Scale): KnownScale => ({
  ...scale,
  repeatabilityGrams: repeatability?.grams ?? null,
});
