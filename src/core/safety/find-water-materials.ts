import { normaliseName } from './read-name.ts';

export interface NamedMaterial {
  readonly name: string;
  /** '' where nobody knows it. */
  readonly inciEu: string;
}

/**
 * Label and common names of what brings water in: water itself, hydrosols and juices, aloe, honey, milk, fresh plant,
 * glycerin and its infusions, which draw it (common practice, no source).
 */
const WATERY =
  /\b(?:aqua|water|eau|hydrosol|hydrolat|juice|aloe|mel|honey|lac|milk|glycerin|glycerine|infusion|tea|coffee|vinegar|fresh)\b/;
/** Dried or in oil they bring none. */
const DRY = /\b(?:powder|dried|oil|butter|wax|cera|infused oil|sodium lactate)\b/;

/** Materials of a formula that bring water in, by their names: those whose names tell nothing are left to the maker. */
export const findWaterMaterials = <Material extends NamedMaterial>(
  materials: readonly Material[],
): readonly Material[] =>
  materials.filter(({ name, inciEu }) =>
    [name, inciEu].map(normaliseName).some((text) => WATERY.test(text) && !DRY.test(text)),
  );
