import type { Generated } from 'kysely';
import type { AwayTables } from './schema-away.ts';
import type { FillingTables } from './schema-filling.ts';
import type { ReachTables } from './schema-reach.ts';
import type { ScalesTables } from './schema-scales.ts';
import type { StepsTables } from './schema-steps.ts';
import type { WeighingTables } from './schema-weighing.ts';

/**
 * The tables, as the queries see them (migrations/ makes them).
 *
 * Two kinds: *records* are append-only, each row belongs to an entry of the hash chain, and the database itself
 * refuses to change or delete one. *Things* can be edited; each has a version, and every edit is an entry too.
 * Masses are whole micrograms, counts whole pieces; typed numbers are kept as the decimal text that was typed.
 * Dates are YYYY-MM-DD, instants ISO 8601 in UTC. Flags are 0 or 1.
 */
export interface Database
  extends ReachTables,
    ScalesTables,
    WeighingTables,
    AwayTables,
    StepsTables,
    FillingTables {
  entry: EntryTable;
  chain_end: ChainEndTable;
  request_salt: RequestSaltTable;
  movement: MovementTable;
  lot_status: LotStatusTable;
  firm_word: FirmWordTable;
  goods_ordered: GoodsOrderedTable;
  addition: AdditionTable;
  step_record: StepRecordTable;
  deviation: DeviationTable;
  batch_close: BatchCloseTable;
  fill_weight: FillWeightTable;
  strike: StrikeTable;
  run_close: RunCloseTable;
  release: ReleaseTable;
  decision: DecisionTable;
  reservation: ReservationTable;
  dispatch: DispatchTable;
  dispatch_tracking: DispatchTrackingTable;
  batch: BatchTable;
  batch_line: BatchLineTable;
  batch_tin: BatchTinTable;
  filling_run: FillingRunTable;
  label_print: LabelPrintTable;
  lot_certificate: LotCertificateTable;
  complaint: ComplaintTable;
  complaint_word: ComplaintWordTable;
  label_count: LabelCountTable;
  attachment_link: AttachmentLinkTable;

  workshop: WorkshopTable;
  person: PersonTable;
  customer: CustomerTable;
  place: PlaceTable;
  scale: ScaleTable;
  material: MaterialTable;
  constituent: ConstituentTable;
  lot: LotTable;
  formula: FormulaTable;
  revision: RevisionTable;
  revision_line: RevisionLineTable;
  revision_step: RevisionStepTable;
  product: ProductTable;
  report: ReportTable;
  report_formula: ReportFormulaTable;
  report_range: ReportRangeTable;
  attachment: AttachmentTable;
  customer_order: CustomerOrderTable;
  order_line: OrderLineTable;
  product_file: ProductFileTable;
  point_of_departure: PointOfDepartureTable;
  label_design: LabelDesignTable;
  label_sheet: LabelSheetTable;
  backup_made: BackupMadeTable;
}

/* ---- records: append-only ---- */

/** The chain: one row for each acknowledged write. `hash` covers the row and the hash before it. */
export interface EntryTable {
  /** 1, 2, 3 ... without gaps. */
  seq: number;
  /** Made where it was entered; unique, so that the same entry sent twice counts once. */
  id: string;
  kind: string;
  subject_kind: string;
  subject_id: string;
  /** Canonical JSON: everything that was written, so that the chain alone tells the story. */
  payload: string;
  /** SHA-256 of what was asked, the route and its whole body: the same stamp on something else is noticed. */
  request_hash: string;
  /** JSON: SHA-256 of each record that came with it, by table and key. A row changed later is noticed. */
  rows: string;
  happened_at: string;
  recorded_at: string;
  /** null only for what the program does by itself before there is a person. */
  person_id: string | null;
  device: string;
  previous_hash: string;
  hash: string;
}

/** One row: where the chain ends. A trigger moves it with every entry, so that entries cut off at the end are missed. */
export interface ChainEndTable {
  id: number;
  seq: number;
  hash: string;
}

/**
 * What was mixed into the request's hash where the request held a customer's text: erased with the customer, so that
 * nobody can try names until the hash fits.
 */
export interface RequestSaltTable {
  entry_id: string;
  salt: string;
}

export interface MovementTable {
  id: string;
  entry_id: string;
  lot_id: string;
  place_id: string;
  kind: string;
  /** Signed: micrograms or pieces, as the lot's unit says. */
  quantity: number;
  reason: string;
  batch_id: string | null;
  filling_run_id: string | null;
  order_line_id: string | null;
  dispatch_id: string | null;
}

export interface LotStatusTable {
  entry_id: string;
  lot_id: string;
  status: string;
  reason: string;
}

export interface FirmWordTable {
  entry_id: string;
  lot_id: string;
  remark: string;
  /** The day it was at the bench. */
  said_on: string;
}

/** What somebody said of goods: ordered, or not after all. The last word counts, until goods come in. */
export interface GoodsOrderedTable {
  entry_id: string;
  material_id: string;
  is_on_its_way: number;
  ordered_on: string | null;
  supplier: string;
  expected_on: string | null;
}

export interface AdditionTable {
  entry_id: string;
  batch_id: string;
  position: number;
  lot_id: string;
  scale_id: string | null;
  target_ug: number;
  actual_ug: number;
  /** 1: more of it is to come, from another lot or because the batch became larger; null: that was all. */
  is_part: number | null;
  /** JSON: what was asked about the reading and answered; null: nothing. */
  reading: string | null;
  /** What its scale may have been out by as it was then, at the worst; null: nobody knew it, or the entry is older. */
  error_ug: number | null;
  /** 1: its scale had failed its check, so that nobody knows what it showed; null: it had not. */
  scale_failed: number | null;
}

export interface StepRecordTable {
  entry_id: string;
  batch_id: string;
  position: number;
  celsius: string | null;
  minutes: string | null;
  remark: string;
  /** JSON of what the step weighed; null where it weighed nothing. */
  weighed: string | null;
}

export interface DeviationTable {
  entry_id: string;
  batch_id: string;
  screen: number | null;
  what: string;
  why: string;
}

export interface BatchCloseTable {
  entry_id: string;
  batch_id: string;
  /** `made` or `abandoned`. */
  outcome: string;
  yield_ug: number | null;
  lot_id: string | null;
  reason: string;
}

export interface FillWeightTable {
  entry_id: string;
  filling_run_id: string;
  number: number;
  gross_ug: number;
  tare_ug: number;
  /** mean, own or net; null: as its run was begun. */
  way: string | null;
  /** Worst error of this net weight; null: as its run was begun. */
  error_ug: number | null;
  /** The weight of the same tin before it was filled up. */
  refill_of: string | null;
  /** JSON: the questions that were answered with "it is so"; null: none was asked. */
  sure: string | null;
}

/** Strikes an addition or a fill weight: the struck entry stays readable. */
export interface StrikeTable {
  entry_id: string;
  struck_entry_id: string;
  reason: string;
}

export interface RunCloseTable {
  entry_id: string;
  filling_run_id: string;
  units: number;
  retained_ug: number | null;
  declined_because: string | null;
  left_ug: number;
  lost_ug: number;
  lot_id: string | null;
}

export interface ReleaseTable {
  entry_id: string;
  filling_run_id: string;
  /** `released` or `rejected`. */
  verdict: string;
  reason: string;
  /** JSON: what was checked and how it stood. */
  checks: string;
}

export interface DecisionTable {
  entry_id: string;
  revision_id: string;
  unknown_key: string;
  /** `accepted` or `refused`. */
  verdict: string;
  reason: string;
  /** JSON: for each market's unknown in `unknown_key` the digest of the composition that it was decided upon. */
  upon: string;
}

export interface ReservationTable {
  entry_id: string;
  order_line_id: string;
  lot_id: string;
  /** Signed: kept for the line, or given free again (negative). */
  units: number;
}

export interface DispatchTable {
  id: string;
  entry_id: string;
  order_id: string;
}

/** What leads to a customer's door stands by itself, so that it can be erased: a dispatch is never changed. */
export interface DispatchTrackingTable {
  dispatch_id: string;
  tracking: string;
}

export interface BatchTable {
  id: string;
  entry_id: string;
  number: string;
  formula_id: string;
  revision_id: string;
  purpose: string;
  /** JSON list of markets. */
  markets: string;
  planned_ug: number;
  retained_ug: number | null;
  declined_because: string | null;
  started_at: string;
}

export interface BatchLineTable {
  batch_id: string;
  position: number;
  stage: string;
  /** `material` or `formula` (a base). */
  item_kind: string;
  item_id: string;
  /** The lot that the plan chose, first-expired-first-out. */
  lot_id: string;
  exact_grams: string;
  target_ug: number;
  low_ug: number;
  high_ug: number;
  scale_id: string | null;
  /** JSON: relative error, smallest weight, warning, as planned. */
  weighing: string;
}

export interface BatchTinTable {
  batch_id: string;
  product_id: string;
  units: number;
}

export interface FillingRunTable {
  id: string;
  entry_id: string;
  number: string;
  batch_id: string;
  product_id: string;
  /** JSON: the product's details as they stood, since a later edit must not change what was filled. */
  product_details: string;
  wanted: number;
  scale_id: string;
  /** The scale's worst error of a net weight and the aim, as they stood: a later change of the scale judges no old tin. */
  scale_error_ug: number;
  aim_ug: number;
  tare_ug: number | null;
  started_at: string;
}

export interface LabelPrintTable {
  entry_id: string;
  filling_run_id: string;
  market: string;
  copies: number;
  sha256: string;
  /** JSON: what was printed on what (contract/labels); null: front and back of the product, as first there was. */
  design: string | null;
}

/** A supplier's paper on one lot, which goes before what is known of its material. The latest counts. */
export interface LotCertificateTable {
  entry_id: string;
  lot_id: string;
  reference: string;
  dated_on: string | null;
  /** JSON of contract/certificates: constituents with ranges, peroxide value, limits by IFRA category. */
  details: string;
  attachment_id: string | null;
}

/** Who said it is no part of it: a customer may be erased. */
export interface ComplaintTable {
  id: string;
  entry_id: string;
  product_id: string;
  /** null: the batch number is not known. */
  filling_run_id: string | null;
  received_on: string;
  /** JSON of contract/product-files. */
  details: string;
}

/** What was found or done about it since; the last `state` counts. */
export interface ComplaintWordTable {
  entry_id: string;
  complaint_id: string;
  state: string;
  said: string;
  /** JSON: what it counts as from now on; null: as before. */
  judged: string | null;
}

/** What became of printed labels, counted by hand. */
export interface LabelCountTable {
  entry_id: string;
  filling_run_id: string;
  kind: string;
  used: number;
  spoilt: number;
  remark: string;
}

/** A file lies under a heading of something; the last word counts. */
export interface AttachmentLinkTable {
  entry_id: string;
  attachment_id: string;
  subject_kind: string;
  subject_id: string;
  heading: string;
  is_taken_out: number;
}

/* ---- things: editable, each with a version ---- */

export interface WorkshopTable {
  id: number;
  /** JSON of contract/workshop details. */
  details: string;
  is_example: number;
  version: number;
}

export interface PersonTable {
  id: string;
  name: string;
  is_active: number;
  version: number;
}

export interface CustomerTable {
  id: string;
  name: string;
  address: string;
  is_erased: number;
  version: number;
}

export interface PlaceTable {
  id: string;
  name: string;
  /** shelf, stall, shop, retained. */
  kind: string;
}

export interface ScaleTable {
  id: string;
  name: string;
  capacity_grams: string;
  readability_grams: string;
  repeatability_grams: string | null;
  accuracy_class: string | null;
  verification_interval_grams: string | null;
  /** Nominal mass of the weight that it is checked with, and how far off that may be. */
  check_weight_grams: string | null;
  check_tolerance_grams: string | null;
  /** When the typed repeatability was last typed: a later test replaces it, an earlier one does not. */
  repeatability_at: string | null;
  version: number;
}

export interface MaterialTable {
  id: string;
  /** ingredient or packaging. */
  kind: string;
  name: string;
  /** JSON of contract/stock material details without the constituents. */
  details: string;
  version: number;
}

export interface ConstituentTable {
  material_id: string;
  position: number;
  name: string;
  cas: string | null;
  least_percent: string;
  typical_percent: string;
  most_percent: string;
  source: string;
  confidence: string;
}

export interface LotTable {
  id: string;
  entry_id: string;
  number: string;
  /** material, formula (a base, or a mixture in its bowl) or product (filled tins). */
  item_kind: string;
  item_id: string;
  /** g or pieces. */
  unit: string;
  since: string;
  found_at_opening: number;
  supplier: string;
  supplier_lot: string | null;
  best_before: string | null;
  keep_until: string | null;
  firm_from: string | null;
  firm_to: string | null;
  /** Money paid for `received` of it, freight included; null: not known. */
  paid: string | null;
  received: number;
  batch_id: string | null;
  filling_run_id: string | null;
  version: number;
}

export interface FormulaTable {
  id: string;
  name: string;
  code: string;
  /** base or mixture. */
  kind: string;
  version: number;
}

export interface RevisionTable {
  id: string;
  formula_id: string;
  number: number;
  /** JSON of contract/formulas revision details without lines and steps. */
  details: string;
  version: number;
}

export interface RevisionLineTable {
  revision_id: string;
  position: number;
  stage: string;
  item_kind: string;
  item_id: string;
  grams: string;
}

export interface RevisionStepTable {
  revision_id: string;
  position: number;
  stage: string;
  kind: string;
  what: string;
  least_celsius: string | null;
  most_celsius: string | null;
  minutes: string | null;
  caution: string;
  /** What whipping and setting need; null where the method does not say. */
  round_minutes: string | null;
  rounds: number | null;
  grows_percent: string | null;
  least_hours: string | null;
  most_hours: string | null;
}

export interface ProductTable {
  id: string;
  formula_id: string;
  name: string;
  /** JSON of contract/orders product details. */
  details: string;
  version: number;
}

export interface ReportTable {
  id: string;
  reference: string;
  base_formula_id: string | null;
  review_by: string;
  /** JSON of contract/formulas report details without formulas and ranges. */
  details: string;
  attachment_id: string | null;
  version: number;
}

export interface ReportFormulaTable {
  report_id: string;
  formula_id: string;
}

export interface ReportRangeTable {
  report_id: string;
  material_id: string;
  least_percent: string;
  most_percent: string;
}

export interface AttachmentTable {
  id: string;
  entry_id: string;
  name: string;
  sha256: string;
  bytes: Uint8Array;
}

export interface CustomerOrderTable {
  id: string;
  number: number;
  customer_id: string | null;
  placed_on: string;
  wanted_by: string;
  note: string;
  cancelled: number;
  /** Why; '' while it stands. */
  cancelled_because: string;
  version: number;
}

export interface OrderLineTable {
  id: string;
  order_id: string;
  position: number;
  product_id: string;
  units: number;
}

/** What a person wrote for the product information file. */
export interface ProductFileTable {
  product_id: string;
  /** JSON of contract/product-files. */
  details: string;
  version: number;
}

/** From which dose of a substance its margin of safety is reckoned, as a person typed it in. */
export interface PointOfDepartureTable {
  id: string;
  /** Of the substance. */
  name: string;
  /** JSON of contract/product-files. */
  details: string;
  version: number;
}

export interface LabelDesignTable {
  product_id: string;
  /** JSON of contract/labels. */
  details: string;
  version: number;
}

/** The geometry of a bought sheet of labels. */
export interface LabelSheetTable {
  id: string;
  name: string;
  /** JSON of contract/labels. */
  details: string;
  version: number;
}

export interface BackupMadeTable {
  id: Generated<number>;
  at: string;
  /** daily, by-hand or before-migration: only dailies are ever cleared away. */
  kind: string;
  file: string;
  bytes: number;
  /** Where the chain ended then: the file must still hold that entry. */
  last_seq: number;
  last_hash: string;
}
