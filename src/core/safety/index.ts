export {
  answerOrigins,
  type MaterialOrigins,
  ORIGIN_FLAGS,
  type OriginAnswer,
  type OriginFlag,
} from './answer-origins.ts';
export type { DecidingBound, ScentAnswer, ScentLimit } from './answer-scent.ts';
export { assessLowWater } from './assess-low-water.ts';
export { buildSafetyTables } from './build-safety-tables.ts';
export { checkComposition } from './check-composition.ts';
export type {
  CheckedNamingUnknown,
  CheckedVerdict,
  CompositionAnswer,
  CompositionQuestion,
  MarketCheck,
  RangedContribution,
  ReasonKind,
  SaleReason,
  UnknownDecision,
} from './composition-check.ts';
export { type ExposureQuestion, findExposureMgPerKgDay } from './find-exposure.ts';
export { findWaterMaterials } from './find-water-materials.ts';
export {
  findWhatHangsOnMemory,
  type MemoryOfCheck,
  type RememberedThing,
} from './find-what-hangs-on-memory.ts';
export { type CasFault, findCasFault } from './judge-cas-number.ts';
export { PHOTOTOXIC_SUM } from './judge-ifra.ts';
export { judgeLimits, type LimitsAnswer, type LimitsInput } from './judge-limits.ts';
export {
  judgeMarginOfSafety,
  type MarginOfSafety,
  type MarginQuestion,
} from './judge-margin-of-safety.ts';
export { judgeOldStock, listNamingChanges, type NamingChange, type OldStock } from './judge-old-stock.ts';
export { type FunctionTold, LISTED_FUNCTIONS } from './judge-positive-lists.ts';
export type { RawMaterialFigures } from './judge-raw-material.ts';
export {
  type FormulaMaterial,
  isReviewClose,
  judgeReport,
  type ReportAnswer,
  type ReportedMaterial,
  type ReportQuestion,
  type ReportVerdict,
  type ReportWord,
  type SafetyReport,
} from './judge-report.ts';
export { judgeSupplierLimits, type SupplierLimit, type SupplierVerdict } from './judge-supplier-limits.ts';
export { findUseContradicted, type UseContradicted } from './judge-use.ts';
export {
  findGramsToAdd,
  findWorstPercent,
  isWithinAtWorst,
  type WeighedPart,
  type WorstLimit,
} from './judge-worst-case.ts';
export { findLargestScent, OWN_MOST, type OwnBound, type ScentQuestion } from './largest-scent.ts';
export type { LimitVerdict, UnknownReason, VerdictWord } from './limit-verdict.ts';
export type {
  JudgedAntioxidant,
  JudgedCriterion,
  LowWaterAnswer,
  LowWaterCaution,
  LowWaterFacts,
  LowWaterReason,
  LowWaterTables,
} from './low-water.ts';
export type { Match, MatchDoubt } from './match.ts';
export { matchRows } from './match-rows.ts';
export {
  type NamedAllergen,
  type NamingAnswer,
  type NamingContext,
  type NamingInput,
  type NamingUnknown,
  type NotNamed,
  nameAllergens,
} from './name-allergens.ts';
export type { PartContents } from './part-bounds.ts';
export type { BlendOil, Share } from './read-blend.ts';
export { type FormulaShare, readLowWaterFacts } from './read-low-water-facts.ts';
export { normaliseName, readNameHints } from './read-name.ts';
export { type NamedOrigin, type OriginInName, readNamedOrigins } from './read-named-origins.ts';
export type { RoomBreak, RoomKind } from './room-breaks.ts';
export {
  findRoomToMove,
  type LineRoom,
  type RoomAnswer,
  type RoomBound,
  type RoomLabel,
  type RoomQuestion,
  type RoomSide,
} from './room-to-move.ts';
export type {
  AllergenRow,
  IfraRow,
  KnownMaterialRow,
  Market,
  PublishedSafetyTables,
  RestrictionRow,
  SharedCasRow,
  Use,
} from './safety-table-rows.ts';
export type { SafetyTables, SubstanceMatches } from './safety-tables.ts';
export {
  findScentInProduct,
  type JudgedPlace,
  type ScentInProduct,
  type WeighingErrors,
} from './scent-in-product.ts';
export type { ScentBound } from './scent-program.ts';
export type { ProductKind } from './situations.ts';
export type { Contribution, Substance } from './substance.ts';
export type { LimitKind } from './told.ts';
