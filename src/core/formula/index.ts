export {
  type ExpandedFormula,
  expandFormula,
  type FormulaLookup,
  type FormulaRecipe,
  type MaterialShare,
} from './expand-formula.ts';
export { type FormulaItem, type FormulaLine, itemKey } from './formula-line.ts';
export { type BatchLine, gramsForBatch } from './grams-for-batch.ts';
export { type FormulaUse, listUsers } from './list-users.ts';
export { mergeMaterials } from './merge-materials.ts';
export { type FormulaPercents, type PercentLine, percentFromGrams } from './percent-from-grams.ts';
export { type FullRange, type PaperRange, readPaperRange } from './read-paper-range.ts';
export {
  type Contribution,
  type ContributionConfidence,
  type ContributionOrigin,
  type MaterialConstituent,
  type RollUpMaterial,
  rollUpContributions,
} from './roll-up-contributions.ts';
