import { fillingWords } from '../../../words/index.ts';
import type { Scale } from '../scales/scale.ts';

type Known = Pick<Scale, 'id' | 'name' | 'readabilityGrams' | 'check'>;

/** The finest scale first: it judges a tin most surely. One that did not pass its check comes last, and is called so. */
export function scalesToChoose(scales: readonly Known[]): { readonly id: string; readonly name: string }[] {
  const isHeld = ({ check }: Known): boolean => check?.isHeld === true;
  return scales
    .toSorted(
      (one, other) =>
        Number(isHeld(one)) - Number(isHeld(other)) ||
        Number(one.readabilityGrams) - Number(other.readabilityGrams),
    )
    .map((scale) => ({
      id: scale.id,
      name: isHeld(scale) ? fillingWords.scaleHeld(scale.name) : scale.name,
    }));
}
