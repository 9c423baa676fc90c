import { canonicalJson, sha256 } from './canonical.ts';

/** A row as it was written, and as it is read again. */
export type RecordRow = Readonly<Record<string, unknown>>;

/**
 * What tells a row from the others that one entry wrote into its table. A lot is a thing and may be corrected; it is
 * watched like a record, since every balance and date hangs on it.
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
};

export const rowKey = (table: string, row: RecordRow): string =>
  (RECORD_KEYS[table] ?? []).map((column) => String(row[column])).join(' ');

/** `movement m1`; where an entry writes one row only, its table says it. */
export const nameRow = (table: string, row: RecordRow): string => `${table} ${rowKey(table, row)}`.trim();

/** A file stands in for itself by its own hash; what is not known is left out. */
export const hashRow = (row: RecordRow): string =>
  sha256(
    canonicalJson(
      Object.fromEntries(
        Object.entries(row).flatMap(([column, value]) => {
          if (value === null || value === undefined) return [];
          return [[column, value instanceof Uint8Array ? sha256(value) : value]];
        }),
      ),
    ),
  );

/** The hashes of the rows of one entry, by table and key: what the chain says of the tables. */
export type RowHashes = Record<string, Record<string, string>>;

export const readRowHashes = (text: string): RowHashes => JSON.parse(text) as RowHashes;

/** Gathers the rows that one entry writes. */
export class RowStory {
  readonly #hashes: RowHashes = {};

  add(table: string, row: RecordRow): void {
    if (RECORD_KEYS[table] === undefined) return;
    this.#hashes[table] = { ...this.#hashes[table], [rowKey(table, row)]: hashRow(row) };
  }

  text(): string {
    return canonicalJson(this.#hashes);
  }
}
