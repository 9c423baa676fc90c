import { type ExactInput, exact, sumOf } from '../quantity/index.ts';
import { findWaterMaterials, type NamedMaterial } from './find-water-materials.ts';
import type { LowWaterFacts } from './low-water.ts';
import { normaliseName } from './read-name.ts';
import type { Use } from './safety-table-rows.ts';

export interface FormulaShare extends NamedMaterial {
  /** Of the finished product, by mass. */
  readonly percent: ExactInput;
}

/** Label and common names, and the row that each stands for (common practice, no source). */
const DISSOLVES: readonly (readonly [RegExp, string])[] = [
  [/\b(?:sodium chloride|maris sal|sea salt|table salt)\b/, 'saturated-solution-sodium-chloride'],
  [/\b(?:sucrose|sugar)\b/, 'saturated-solution-sucrose'],
  [/\b(?:magnesium sulfate|magnesium sulphate|epsom)\b/, 'saturated-solution-magnesium-sulfate-heptahydrate'],
  [/\bmagnesium chloride\b/, 'saturated-solution-magnesium-chloride'],
  [/\bpotassium chloride\b/, 'saturated-solution-potassium-chloride'],
];

const ANTIOXIDANTS: readonly (readonly [RegExp, string])[] = [
  [/\b(?:tocopherol|vitamin e)\b/, 'tocopherol'],
  [/\brosmarinus officinalis leaf extract\b|\brosemary (?:leaf )?extract\b/, 'rosemary-leaf-extract'],
];

const STARCH = /\b(?:starch|maranta|arrowroot|tapioca)\b/;

const isCalled = ({ name, inciEu }: NamedMaterial, words: RegExp): boolean =>
  [name, inciEu].map(normaliseName).some((text) => words.test(text));

/**
 * What a formula by itself tells of water: whether some goes in, what of it would dissolve, antioxidants, starch. Read off
 * names, so that it is a proposal: a person who knows the materials may say otherwise. Of what has no label name nobody knows
 * whether water is in it. What is washed off is taken to be
 * used where water can come in; of what stays on the skin nobody can tell from the formula.
 */
export function readLowWaterFacts(materials: readonly FormulaShare[], use: Use): LowWaterFacts {
  const shareOf = (words: RegExp) =>
    sumOf(materials.filter((each) => isCalled(each, words)).map(({ percent }) => exact(percent)));
  const antioxidants = ANTIOXIDANTS.map(([words, id]) => ({ id, percent: shareOf(words) })).filter(
    ({ percent }) => percent.gt(0),
  );
  const starchPercent = shareOf(STARCH);
  return {
    ...(findWaterMaterials(materials).length > 0
      ? { hasWaterPhase: true }
      : materials.every(({ inciEu }) => inciEu.trim() !== '') && { hasWaterPhase: false }),
    ...(use === 'rinse-off' && { canWaterComeIn: true }),
    dissolves: DISSOLVES.filter(([words]) => shareOf(words).gt(0)).map(([, id]) => id),
    antioxidants,
    ...(starchPercent.gt(0) && { starchPercent }),
  };
}
