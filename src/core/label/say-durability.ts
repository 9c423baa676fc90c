import { durabilityFigures } from './durability-figures.ts';

/**
 * How the date of minimum durability stands on an English label: Article 19(1)(c) asks for "best used before the end of",
 * or for the hourglass of Annex VII before the figures alone.
 */
export const sayDurability = (date: string, sign: 'words' | 'hourglass' = 'words'): string =>
  sign === 'words' ? `Best used before the end of ${durabilityFigures(date)}` : durabilityFigures(date);

/** No law gives the words; the ISO date cannot be read as another day where the month goes first. */
export const sayDurabilityInUs = (date: string): string => `Best used before the end of ${date}`;
