import { canonicalJson, sha256 } from './canonical.ts';

/** A row as it was written, and as it is read again. */
export type RecordRow = Readonly<Record<string, unknown>>;

/**
 * What tells a row from the others that one entry wrote into its table. A lot is a thing and may be corrected; it
 * belongs to an entry like a record all the same, since every balance and date hangs on it.
 */
export const RECORD_KEYS: Readonly<Record<string, readonly string[]>> = {
  movement: ['id'],
  lot: ['id'],
  lot_status: ['lot_id'],
  firm_word: [],
  addition: [],
  step_record: [],
  deviation: [],
  batch_close: [],
  fill_weight: [],
  strike: [],
  run_close: [],
  release: [],
  decision: [],
  reservation: ['order_line_id', 'lot_id'],
  dispatch: ['id'],
  batch: ['id'],
  batch_line: ['batch_id', 'position'],
  batch_tin: ['batch_id', 'product_id'],
  filling_run: ['id'],
  label_print: [],
  attachment: ['id'],
  goods_ordered: [],
  lot_certificate: [],
  complaint: ['id'],
  complaint_word: [],
  label_count: [],
  attachment_link: [],
  scale_test: [],
  scale_check: [],
  batch_resize: [],
  batch_target: ['position'],
  addition_close: [],
  spill: [],
  without_recipe: [],
  claim: [],
  claim_answer: [],
  step_begun: [],
  whip_round: [],
  fill_way: [],
  run_ready: [],
  tin_fate: [],
  run_count: ['part'],
};

/** What tells the rows of a thing apart: they are edited, and belong to whichever entry spoke of them last. */
export const THING_KEYS: Readonly<Record<string, readonly string[]>> = {
  workshop: [],
  person: ['id'],
  customer: ['id'],
  place: ['id'],
  scale: ['id'],
  material: ['id'],
  constituent: ['material_id', 'position'],
  formula: ['id'],
  revision: ['id'],
  revision_line: ['revision_id', 'position'],
  revision_step: ['revision_id', 'position'],
  product: ['id'],
  report: ['id'],
  report_formula: ['report_id', 'formula_id'],
  report_range: ['report_id', 'material_id'],
  customer_order: ['id'],
  order_line: ['id'],
  product_file: ['product_id'],
  label_design: ['product_id'],
  point_of_departure: ['id'],
  label_sheet: ['id'],
  device: ['id'],
  person_pin: ['person_id'],
  unlocked: ['device_id', 'person_id'],
};

export const isThing = (table: string): boolean => table in THING_KEYS;
export const isWatched = (table: string): boolean => table in RECORD_KEYS || isThing(table);

/** Of such a row counts what the last entry says of it. A photograph may be emptied, and nothing else is changed in a file. */
export const isEdited = (table: string): boolean =>
  table === 'lot' || table === 'attachment' || isThing(table);

/** What a customer may ask to be erased: even its hash would let somebody try names until one fits. */
const ERASABLE: Readonly<Record<string, readonly string[]>> = {
  customer: ['name', 'address'],
  customer_order: ['note', 'cancelled_because'],
};

/** By what a person knows a thing. */
const NAMED_BY: Readonly<Record<string, string>> = {
  person: 'name',
  place: 'name',
  scale: 'name',
  material: 'name',
  lot: 'number',
  formula: 'name',
  product: 'name',
  report: 'reference',
  customer_order: 'number',
  label_sheet: 'name',
  point_of_departure: 'name',
  device: 'name',
};

export const rowKey = (table: string, row: RecordRow): string =>
  (RECORD_KEYS[table] ?? THING_KEYS[table] ?? []).map((column) => String(row[column])).join(' ');

/** `movement m1`, `scale s1 (Bench scale)`; where an entry writes one row only, its table says it. */
export function nameRow(table: string, row: RecordRow): string {
  const known = NAMED_BY[table];
  const shown = known === undefined ? '' : ` (${row[known]})`;
  return `${`${table} ${rowKey(table, row)}`.trim()}${shown}`;
}

/** A file stands in for itself by its own hash; what is not known is left out, and so is what may be erased. */
export const hashRow = (table: string, row: RecordRow): string =>
  sha256(
    canonicalJson(
      Object.fromEntries(
        Object.entries(row).flatMap(([column, value]) => {
          if (value === null || value === undefined || ERASABLE[table]?.includes(column)) return [];
          return [[column, value instanceof Uint8Array ? sha256(value) : value]];
        }),
      ),
    ),
  );

/** The hashes of the rows of one entry, by table and key: what the chain says of the tables. null: taken away. */
export type RowHashes = Record<string, Record<string, string | null>>;

export const readRowHashes = (text: string): RowHashes => JSON.parse(text) as RowHashes;

/** Gathers the rows that one entry writes, and those of things that it takes away. */
export class RowStory {
  readonly #hashes: RowHashes = {};

  add(table: string, row: RecordRow): void {
    this.#tell(table, row, hashRow(table, row));
  }

  remove(table: string, row: RecordRow): void {
    this.#tell(table, row, null);
  }

  #tell(table: string, row: RecordRow, hash: string | null): void {
    if (isWatched(table)) this.#hashes[table] = { ...this.#hashes[table], [rowKey(table, row)]: hash };
  }

  text(): string {
    return canonicalJson(this.#hashes);
  }
}
