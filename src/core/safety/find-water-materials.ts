import { normaliseName } from './read-name.ts';

export interface NamedMaterial {
  readonly name: string;
  /** '' where nobody knows it. */
  readonly inciEu: string;
}

/**
 * Label and common names of what brings water in: water itself, hydrosols and juices, aloe, honey, milk, coffee, tea,
 * glycerin and its infusions, which draw it (common practice, no source).
 */
const WATERY =
  /\b(?:aqua|water|eau|juice|aloe|mel|honey|lac|milk|glycerin|glycerine|infusion|tea|coffee|vinegar)\b/;
/** Of an oil, a butter or a wax made of it that is said as well, and water is in it all the same. */
const WET =
  /\b(?:fresh|puree|pulp|hydrosols?|hydrolate?s?|distillate|buttermilk|yogh?urt|cream|creme|gel|lotion|emulsion|syrup)\b/;
/** Dried it brings none. */
const DRIED = /\b(?:powder|dried|anhydrous)\b/;
/** Pressed out of it, or steeped in one of these, it brings none. */
const FATTY = /\b(?:oil|butter|wax|cera|sodium lactate)\b/;

const isWatery = (text: string): boolean =>
  !DRIED.test(text) && (WET.test(text) || (WATERY.test(text) && !FATTY.test(text)));

/** A ready-made base has several ingredients in its label name, and one of them is enough. */
const ingredientsOf = (inciEu: string): string[] => inciEu.split(/[,;]|\(and\)/i);

/** Materials of a formula that bring water in, by their names: those whose names tell nothing are left to the maker. */
export const findWaterMaterials = <Material extends NamedMaterial>(
  materials: readonly Material[],
): readonly Material[] =>
  materials.filter(({ name, inciEu }) => [name, ...ingredientsOf(inciEu)].map(normaliseName).some(isWatery));
