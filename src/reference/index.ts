export type { AmbiguousAlias, EssentialOil, OilConstituent } from './essential-oil.ts';
export { type FigureHeightRow, figureHeightSources, figureHeights } from './eu/figure-heights-76-211.ts';
export {
  allergenCasTraps,
  allergenNamingRules,
  fragranceAllergenCounts,
  fragranceAllergenSources,
  fragranceAllergens,
} from './eu/fragrance-allergens-2023-1545.ts';
export {
  type InciCasTrap,
  type InciName,
  type InciRule,
  inciCasTraps,
  inciNames,
  inciRules,
  inciSources,
} from './eu/inci-names-2025-1175.ts';
export {
  type LabelLanguageRow,
  labelLanguageSources,
  labelLanguages,
} from './eu/label-languages-2026.ts';
export { labelRuleSources, labelRules } from './eu/label-rules-1223-2009.ts';
export {
  type NationalPeculiarity,
  type NetContentsRecordRule,
  type NetContentsScope,
  netContentsNationalPeculiarities,
  netContentsRecordRules,
  netContentsScope,
  type PackersRule,
  packersRuleSources,
  packersRules,
} from './eu/packers-rules-76-211.ts';
export {
  type AllWeighedTest,
  type CountTest,
  countTests,
  type DoubleCountTest,
  type MeanTest,
  type MeanTestFormula,
  meanTestFormulas,
  meanTests,
  type ReferenceTestBatchRule,
  referenceTestBatchRules,
  referenceTestSources,
  type SingleCountTest,
} from './eu/reference-test-76-211.ts';
export {
  bodyParts,
  productTypes,
  restrictedSubstanceSources,
  restrictedSubstances,
  restrictionConditions,
} from './eu/restricted-substances-2025.ts';
export {
  type MeasuringErrorRule,
  measuringErrorRules,
  type TolerableErrorRounding,
  type TolerableErrorRow,
  tolerableErrorRoundings,
  tolerableErrorSources,
  tolerableErrors,
} from './eu/tolerable-errors-76-211.ts';
export type { CasTrap, FragranceAllergen, NamingRule } from './fragrance-allergen.ts';
export {
  type ControlChartFactors,
  type ControlChartFormula,
  controlChartFactors,
  controlChartFormulas,
  controlChartSources,
  type NormalQuantileRow,
  normalQuantiles,
  type RunRule,
  runRules,
  type StudentQuantileRow,
  studentQuantiles,
  type ToleranceFactorRow,
  toleranceFactors,
} from './gathered/control-charts-2026.ts';
export {
  type DensityRow,
  type DensityTemperatureRule,
  densities,
  densitySources,
  densityTemperatureRules,
} from './gathered/densities-2026.ts';
export { essentialOilSources } from './gathered/essential-oil-sources-2026.ts';
export { ambiguousOilAliases, essentialOils } from './gathered/essential-oils-2026.ts';
export {
  antioxidantLevels,
  type GrowthLimit,
  growthLimits,
  type LowRiskCriterion,
  type LowWaterProductClass,
  type LowWaterRule,
  lowRiskCriteria,
  lowWaterProductClasses,
  lowWaterRules,
  lowWaterSources,
  type MicroLimit,
  microLimits,
  type PeroxideConversion,
  type PeroxideLevel,
  peroxideConversions,
  peroxideLevels,
  type SolutionActivity,
  solutionActivities,
  starchLevels,
  type UsageLevel,
} from './gathered/low-water-2026.ts';
export {
  type OriginInName,
  originInNameSources,
  originsInNames,
} from './gathered/origins-in-names-2026.ts';
export { type TargetQuantityRule, targetQuantityRules, targetQuantitySources } from './gb/target-quantity-2007.ts';
export { ifraCategories, ifraLimits, ifraRules, ifraSources } from './ifra/limits-49.ts';
export type { IfraCategory, IfraCategoryLimit, IfraCategoryRow, IfraLimit, IfraRule } from './ifra-limit.ts';
export {
  type WeighingUncertaintyExample,
  type WeighingUncertaintyRule,
  weighingUncertaintyRules,
  weighingUncertaintySources,
} from './jcgm/weighing-uncertainty-100.ts';
export type { LabelMarket, LabelRule } from './label-rule.ts';
export { type CheckWeightRow, checkWeightSources, checkWeights } from './oiml/check-weights-r111-1.ts';
export {
  type AccuracyClass,
  type AccuracyClassRow,
  accuracyClasses,
  type InitialErrorRow,
  type InServiceErrorRule,
  initialErrors,
  inServiceErrorRules,
  scaleSources,
} from './oiml/scales-r76-1.ts';
export type {
  BodyPart,
  ProductType,
  RestrictedSubstance,
  RestrictionCondition,
  RestrictionMarket,
  RestrictionRule,
  RestrictionUse,
  VocabularyWord,
} from './restricted-substance.ts';
export {
  type AggregateExposure,
  aggregateExposures,
  type ExposureFormula,
  type ExposureMapping,
  type ExposureParameter,
  type ExposureProductType,
  exposureFormulas,
  exposureMappings,
  exposureParameters,
  exposureProductTypes,
  exposureSources,
} from './sccs/exposure-notes-12.ts';
export type { Band, Confidence, Evidence, ReferenceSource, SourcedRow } from './sourced-row.ts';
export {
  type PanelFigureHeightRow,
  usLabelRuleSources,
  usLabelRules,
  usPanelFigureHeights,
} from './us/label-rules-21-cfr-701.ts';
export {
  type SmallestWeightExample,
  type SmallestWeightRule,
  smallestWeightRules,
  smallestWeightSources,
} from './usp/smallest-weight-41.ts';

