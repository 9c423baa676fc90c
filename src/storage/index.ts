export {
  type AttachmentLinkRow,
  emptyAttachment,
  insertAttachment,
  insertAttachmentLink,
  type LinkedAttachment,
  listLinkedAttachments,
  listStruckPhotos,
  type StruckPhoto,
} from './attachment-link-store.ts';
export { type BackupFile, datedName, ownBackupFolder, writeBackup } from './backup.ts';
export { type BackupRow, clearOldDailies, findLastBackup, insertBackup } from './backup-store.ts';
export { type BatchLossRow, listBatchLosses } from './batch-loss-store.ts';
export {
  type AdditionRow,
  type DeviationRow,
  insertAddition,
  insertDeviation,
  insertStepRecord,
  insertStrike,
  listAdditions,
  listAdditionsAt,
  listBasesWeighedIn,
  listBatchSteps,
  listChangedSinceMade,
  listDeviations,
  listFirstUses,
  listStepRecords,
  listStrikesOfBatch,
  type Signed,
  type SignedAddition,
  type SignedStep,
  type SignedStrike,
  type StepRecordRow,
} from './batch-record-store.ts';
export {
  type BatchCloseRow,
  type BatchHead,
  type BatchLineNow,
  type BatchLineRow,
  type BatchRow,
  type BatchTinRow,
  findBatch,
  findBatchLine,
  findBatchRevisionDetails,
  insertBatch,
  insertBatchClose,
  lastBatchNumber,
  listBatches,
  listBatchLines,
  listBatchTins,
  listTinsOfBatches,
  type NamedBatchLine,
} from './batch-store.ts';
export {
  insertStepBegun,
  insertWhipRound,
  listEarlierBatches,
  listStepsBegun,
  listStepsWeighed,
  listWhipRounds,
  type SignedBegun,
  type SignedRound,
  type StepBegunRow,
  type WhipRoundRow,
} from './bench-step-store.ts';
export { canonicalJson, sha256 } from './canonical.ts';
export {
  type CertificateOfLot,
  findCertificate,
  insertCertificate,
  type LotCertificateRow,
  listCertificates,
  listCertificatesOfLot,
  type SignedCertificate,
} from './certificate-store.ts';
export { type CheckName, checkUp, type Finding } from './check-up.ts';
export {
  type ClaimRow,
  findClaim,
  findClaimOfKept,
  insertClaim,
  insertClaimAnswer,
  listClaimsOf,
  listOpenClaims,
  type SignedClaim,
} from './claim-store.ts';
export {
  type ComplaintRow,
  findComplaint,
  insertComplaint,
  insertComplaintWord,
  listComplaints,
  listComplaintWords,
  type SignedComplaint,
  type SignedComplaintWord,
} from './complaint-store.ts';
export { countScreens, judgeLine } from './count-screens.ts';
export {
  type CustomerRow,
  findCustomer,
  insertCustomer,
  listCustomers,
  updateCustomer,
} from './customer-store.ts';
export {
  type DecisionRow,
  type FormerDecision,
  insertDecision,
  listDecisions,
  listFormerDecisions,
  type SignedDecision,
} from './decision-store.ts';
export {
  type DeviceRow,
  deleteUnlocked,
  findDevice,
  findDeviceByToken,
  insertDevice,
  insertUnlocked,
  isUnlockedOn,
  listDevices,
  listUnlocked,
  noteSeen,
  type SeenDevice,
  updateDevice,
} from './device-store.ts';
export {
  type DispatchRow,
  findDispatch,
  insertDispatch,
  listDispatches,
  listMovementsOfDispatches,
  setTracking,
} from './dispatch-store.ts';
export {
  appendEntry,
  type ChainEnd,
  type EntryRow,
  findEntry,
  hashEntry,
  lastWrittenAt,
  listEntriesOf,
  readChainEnd,
} from './entry-store.ts';
export { eraseOrdersText } from './erase-orders-text.ts';
export { exportAsCsvZip, exportAsJson } from './export.ts';
export { fillFrom } from './fill-from.ts';
export {
  countRunsOfBatch,
  type FillingRunRow,
  type FillWeightRow,
  findLabelPrint,
  findRun,
  insertFillWeight,
  insertLabelPrint,
  insertRelease,
  insertRun,
  insertRunClose,
  type LabelCopies,
  type LabelPrintRow,
  listClosedRuns,
  listFillWeights,
  listLabelCopies,
  listReleasedRuns,
  listReleases,
  listRunCloses,
  listRunStates,
  listRunsAtHand,
  listRunsOfBatches,
  listRunsOfProduct,
  nextWeightNumber,
  type ReleaseRow,
  type RunCloseRow,
  type RunHead,
  type RunMovement,
  type RunState,
  type SignedClose,
  type SignedRelease,
  type SignedWeight,
  sumRunMovements,
} from './filling-store.ts';
export { type FirstThing, findFilledTables } from './first-step-store.ts';
export { type FormulaRow, findFormula, insertFormula, listFormulas, updateFormula } from './formula-store.ts';
export {
  type GoodsOrderedRow,
  insertGoodsOrdered,
  listGoodsOnTheirWay,
} from './goods-ordered-store.ts';
export {
  findLabelSheet,
  findLastPrintOn,
  insertLabelCount,
  insertLabelSheet,
  type LabelCountRow,
  type LabelSheetRow,
  listLabelCounts,
  listLabelDesigns,
  listLabelPrints,
  listLabelSheets,
  type SignedLabelCount,
  type SignedLabelPrint,
  updateLabelSheet,
} from './label-design-store.ts';
export {
  type LotAtHand,
  type LotChoice,
  listLotsAtHand,
  listLotsNotReleased,
  listMovementsOfEntry,
  listReachedLots,
  type NotReleasedLot,
  type ReachedLotRow,
  type StandingAt,
  sumMadeOnHand,
} from './lot-at-hand-store.ts';
export {
  type FullMark,
  insertFirmWord,
  insertLot,
  insertLotStatus,
  type LotRow,
  listFullMarks,
  listLotsOfBatches,
  listStandingLotIds,
  listStandingLots,
  nextLotNumber,
  updateLotFacts,
} from './lot-store.ts';
export {
  type ConstituentRow,
  findMaterial,
  findMaterials,
  insertMaterial,
  listConstituents,
  listMaterials,
  type MaterialRow,
  updateMaterial,
} from './material-store.ts';
export {
  insertMovements,
  listMovementsOfLot,
  type MovementRow,
  type PlaceSum,
  type SignedMovement,
  sumByPlace,
} from './movement-store.ts';
export {
  findOrder,
  insertOrder,
  insertReservations,
  type LotUnits,
  listOrderLines,
  listOrders,
  listReserved,
  listReservedByLot,
  listSent,
  nextOrderNumber,
  type OrderLineRow,
  type OrderRow,
  replaceOrderLines,
  updateOrder,
} from './order-store.ts';
export { findPerson, insertPerson, listPeople, type PersonRow, updatePerson } from './person-store.ts';
export {
  countPinTry,
  deletePin,
  findPin,
  forgetPinTries,
  keepPin,
  listPinHolders,
  type PersonPinRow,
  type PinTryRow,
} from './pin-store.ts';
export {
  findPlace,
  insertPlace,
  listPlaces,
  type PlaceRow,
  retainedPlaceId,
  shelfPlaceId,
} from './place-store.ts';
export { findDetailsOf, findLabelDesign, findProductFile, keepDetailsOf } from './product-details-store.ts';
export {
  findPointOfDeparture,
  insertPointOfDeparture,
  listPointsOfDeparture,
  type PointOfDepartureRow,
  updatePointOfDeparture,
} from './product-file-store.ts';
export { findProduct, insertProduct, listProducts, type ProductRow, updateProduct } from './product-store.ts';
export { type RowHashes, RowStory } from './record-rows.ts';
export {
  type AttachmentRow,
  attachToReport,
  type FiledReport,
  findAttachment,
  findReport,
  insertReport,
  listReportFormulas,
  listReportRanges,
  listReports,
  type ReportParts,
  type ReportRangeRow,
  type ReportRow,
  updateReport,
} from './report-store.ts';
export {
  type BatchResizeRow,
  type BatchTargetRow,
  insertAdditionClose,
  insertResize,
  insertSpill,
  listResizes,
  listSpills,
  type SignedResize,
  type SignedSpill,
} from './resize-store.ts';
export { type Restored, restoreBackup } from './restore.ts';
export {
  findRevision,
  insertRevision,
  listLatestRevisions,
  listRevisionLines,
  listRevisionSteps,
  listRevisions,
  type NamedRevisionLine,
  type RevisionHead,
  type RevisionLineRow,
  type RevisionParts,
  type RevisionRow,
  type RevisionStepRow,
  replaceRevision,
} from './revision-store.ts';
export {
  type FillWayRow,
  findFillWays,
  insertFillWay,
  insertRunCounts,
  insertRunReady,
  insertTinFate,
  listRunCounts,
  listRunReady,
  type RunCountRow,
  type RunReadyRow,
  type SignedReady,
} from './run-ready-store.ts';
export {
  findScaleCheckAt,
  insertScaleCheck,
  insertScaleTest,
  listScaleChecks,
  listScaleTests,
  listWeighedOn,
  type ScaleCheckRow,
  type ScaleTestRow,
} from './scale-record-store.ts';
export {
  findScale,
  insertScale,
  listScales,
  type ScaleRow,
  type ScaleThing,
  updateScale,
} from './scale-store.ts';

export type { Database } from './schema.ts';
export { listSold, type SoldTins } from './sold-store.ts';
export { emptyLog, openProblem, openStorage, type Reader, type Storage } from './storage.ts';
export {
  findLotIdsLike,
  listLastUses,
  listSentOfLots,
  type MadeFrom,
  type SentTins,
  stepAlong,
  sumByKind,
} from './trace-store.ts';
export {
  type BatchUnderWay,
  listBatchesUnderWay,
  listOpenOrders,
  listStillToWeigh,
} from './under-way-store.ts';
export {
  findWithoutRecipe,
  insertBatchLine,
  insertRevisionLine,
  insertRevisionStep,
  insertWithoutRecipe,
  type WithoutRecipeRow,
} from './without-recipe-store.ts';
export {
  insertWorkshop,
  readWorkshop,
  updateWorkshop,
  type WorkshopRow,
} from './workshop-store.ts';
export {
  type Asked,
  giveUp,
  isWritten,
  joinWrite,
  orGiveUp,
  type Writer,
  type WriteStamp,
  type WriteStory,
  writeOnce,
} from './write.ts';
export { makeWrittenWatch, type Written, type WrittenWatch } from './written-watch.ts';
