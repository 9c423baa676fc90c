import { durabilityFigures } from './durability-figures.ts';

/** How the date of minimum durability stands on an English label: Article 19(1)(c) asks for "best used before the end of". */
export const sayDurability = (date: string): string =>
  `Best used before the end of ${durabilityFigures(date)}`;
