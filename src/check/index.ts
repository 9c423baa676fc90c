export type { SaleAnswer } from './answer-check.ts';
export { answerOpenedOrigins } from './answer-opened-origins.ts';
export { type CheckFacts, checkDraft, type FormulaDraft, type ReadFacts, readFacts } from './check-draft.ts';
export type {
  AskedProduct,
  Checked,
  CheckedGroup,
  KnownReport,
  MaterialKind,
  OpenedRevision,
  SignedDecision,
} from './checked.ts';
export { EVERYWHERE } from './everywhere.ts';
export { findReport as findCoveringReport } from './find-report.ts';
export { type FoundRoom, findRoom } from './find-room.ts';
export { type FoundScent, findScent, type ScentWish } from './find-scent.ts';
export { isHeardOf } from './is-heard-of.ts';
export { joinPapers, type LotPaper, listReplaced } from './join-papers.ts';
export { joinRequests } from './join-requests.ts';
export { type FormulaQuestion, judgeFormula } from './judge-formula.ts';
export { isUnderOlderLaw, judgeOldLabels, type OldLabel, type OldLabelQuestion } from './judge-old-labels.ts';
export { judgeSale } from './judge-sale.ts';
export { listIngredients } from './list-ingredients.ts';
export {
  isOfLot,
  type LotQuestion,
  listLotQuestions,
  listLotUnknowns,
  withLotDecisions,
} from './list-lot-questions.ts';
export { listOpened } from './list-opened.ts';
export { listOtherStatements, type OtherStatement } from './list-other-statements.ts';
export type { ToldReason } from './list-reasons.ts';
export { listRequests, type PaperRequest } from './list-requests.ts';
export { listStanding } from './list-standing.ts';
export { listStops } from './list-stops.ts';
export { listUnknowns, type MarketUnknown } from './list-unknowns.ts';
export { listWarnings } from './list-warnings.ts';
export { listWorstLimits, type NamedLimit } from './list-worst-limits.ts';
export { marketsAsked } from './markets-asked.ts';
export { openComposition } from './open-composition.ts';
export { readCasNumbers } from './read-cas-numbers.ts';
export { type LowWaterSaid, sayLowWater } from './say-low-water.ts';
export { tellWater, type WaterSaid } from './tell-water.ts';
export { decisionsByKey, marketKeysOf, standingDecisions } from './unknown-key.ts';
export { usesOf } from './uses-of.ts';
export { type RevisionCheck, type SoldIn, viewCheck } from './view-check.ts';
export { type RoomView, viewRoom } from './view-room.ts';
export { findLeastGrams, findWeighingErrors, type ScentBatch } from './weighing-errors.ts';
export {
  type CertifiedLot,
  type CountingCertificate,
  type PaperDetails,
  withCertificate,
} from './with-certificate.ts';
