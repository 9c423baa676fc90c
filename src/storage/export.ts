import { strToU8, zipSync } from 'fflate';
import { sql } from 'kysely';
import type { Storage } from './storage.ts';

type Cell = string | number | null | Uint8Array;
type Row = Readonly<Record<string, Cell>>;

interface Table {
  readonly name: string;
  readonly columns: readonly string[];
  readonly rows: readonly Row[];
}

/** Secrets, though only as hashes: they are of use to nobody who reads an export. Backups hold them. */
const SECRET: Readonly<Record<string, readonly string[]>> = {
  device: ['token_hash'],
  person_pin: ['salt', 'hash', 'key_name'],
};

const isOpen =
  (table: string) =>
  (column: string): boolean =>
    !SECRET[table]?.includes(column);

/** Every table with all its rows, by name: read in one transaction, so that they fit together. */
const readTables = ({ db }: Storage): Promise<Table[]> =>
  db.transaction().execute(async (tx) => {
    const tables: Table[] = [];
    for (const { name, columns } of await tx.introspection.getTables()) {
      const open = columns.map((column) => column.name).filter(isOpen(name));
      const { rows } = await sql<Row>`select ${sql.join(open.map((column) => sql.ref(column)))}
        from ${sql.table(name)}`.execute(tx);
      tables.push({ name, columns: open, rows });
    }
    return tables.sort((one, other) => (one.name < other.name ? -1 : 1));
  });

const inBase64 = (cell: Cell): string | number | null =>
  cell instanceof Uint8Array ? Buffer.from(cell).toString('base64') : cell;

/** The whole workshop as one document, nothing changed: attachments stand in base64. */
export async function exportAsJson(storage: Storage): Promise<Record<string, unknown>> {
  const writeRow = (row: Row) =>
    Object.fromEntries(Object.entries(row).map(([column, cell]) => [column, inBase64(cell)]));
  const tables = (await readTables(storage)).map(({ name, rows }) => [name, rows.map(writeRow)]);
  return { format: 'gramwright-export', schema: storage.schemaVersion, tables: Object.fromEntries(tables) };
}

/** One CSV file a table, for a spreadsheet. */
export async function exportAsCsvZip(storage: Storage, at: string): Promise<Uint8Array> {
  const files = (await readTables(storage)).map(({ name, columns, rows }) => [
    `${name}.csv`,
    strToU8(writeCsv(columns, rows)),
  ]);
  return zipSync(Object.fromEntries(files), { mtime: at });
}

/** RFC 4180: commas, CRLF, quotes doubled. The mark in front tells spreadsheets that it is UTF-8. */
export function writeCsv(columns: readonly string[], rows: readonly Row[]): string {
  const lines = rows.map((row) => columns.map((column) => writeCell(row[column] ?? null)));
  return `\ufeff${[columns, ...lines].map((cells) => `${cells.join(',')}\r\n`).join('')}`;
}

/**
 * A text that a spreadsheet would run as a formula gets an apostrophe in front: one that begins with = + - @, or with a
 * tab or a carriage return before it (OWASP, CSV injection). Numbers of the ledger stay numbers, negative ones too.
 */
function writeCell(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return String(cell);
  const text = String(inBase64(cell));
  const guarded = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded;
}
