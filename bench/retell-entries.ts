import { canonicalJson, type EntryRow, hashEntry, RowStory, type Storage } from '../src/storage/index.ts';

type Row = Record<string, string | number | Uint8Array | null>;

/** What was written from one entry on, table by table, in an order in which no row names one that comes later. */
export interface Story {
  readonly entries: readonly EntryRow[];
  readonly rows: readonly (readonly [table: string, rows: readonly Row[]])[];
  /** Made in the story: a retelling gives each a new one. */
  readonly ids: ReadonlySet<string>;
}

const OF_ENTRY = 'select * from TABLE where entry_id in (select id from entry where seq > ?) order by rowid';
const of = (things: string, column: string): string =>
  `select * from TABLE where ${column} in (select id from ${things} where entry_id in (select id from entry where seq > ?))`;
const ORDERS = "select subject_id from entry where seq > ? and subject_kind = 'order'";

const TABLES: readonly (readonly [table: string, query: string])[] = [
  ['customer_order', `select * from TABLE where id in (${ORDERS})`],
  ['order_line', `select * from TABLE where order_id in (${ORDERS})`],
  ['batch', OF_ENTRY],
  ['filling_run', OF_ENTRY],
  ['lot', OF_ENTRY],
  ['batch_line', of('batch', 'batch_id')],
  ['batch_tin', of('batch', 'batch_id')],
  ...[
    'dispatch',
    'lot_status',
    'firm_word',
    'addition',
    'step_record',
    'batch_close',
    'fill_weight',
    'run_close',
    'release',
    'reservation',
    'movement',
  ].map((table) => [table, OF_ENTRY] as const),
];

export const lastSeq = ({ handle }: Storage): number =>
  (handle.prepare('select max(seq) as seq from entry').get() as { seq: number }).seq;

export function readStory({ handle }: Storage, fromSeq: number): Story {
  const entries = handle.prepare('select * from entry where seq > ? order by seq').all(fromSeq) as EntryRow[];
  const rows = TABLES.map(
    ([table, query]) => [table, handle.prepare(query.replace('TABLE', table)).all(fromSeq) as Row[]] as const,
  );
  const made = rows.flatMap(([, some]) =>
    some.flatMap((row) => (typeof row.id === 'string' ? [row.id] : [])),
  );
  return { entries, rows, ids: new Set([...entries.map((entry) => entry.id), ...made]) };
}

/** Numbers that stand once in the file. */
function renumber(table: string, number: Row[string], nth: number): Row[string] {
  if (number === null || number === undefined || table === 'fill_weight') return number ?? null;
  return typeof number === 'number' ? number + nth * 10_000 : `${number}-${nth}`;
}

/**
 * The same story once more, under new ids and numbers, as links of the chain like any other: years of work in seconds.
 * `instead` names what it is told of this time: another tub of the same oil.
 */
export function retell(
  { handle }: Storage,
  story: Story,
  nth: number,
  instead: ReadonlyMap<string, string>,
): void {
  const renew = (value: Row[string]): Row[string] => {
    if (typeof value !== 'string') return value ?? null;
    return story.ids.has(value) ? `${value}-${nth}` : (instead.get(value) ?? value);
  };
  const inserts = new Map<string, ReturnType<typeof handle.prepare>>();
  const write = (table: string, row: Row): void => {
    const names = Object.keys(row);
    const insert =
      inserts.get(table) ??
      handle.prepare(
        `insert into ${table} (${names.join(', ')}) values (${names.map(() => '?').join(', ')})`,
      );
    inserts.set(table, insert);
    insert.run(...Object.values(row));
  };
  handle.exec('begin immediate');
  const rows = story.rows.flatMap(([table, some]) =>
    some.map((row) => {
      const renewed = Object.fromEntries(Object.entries(row).map(([name, value]) => [name, renew(value)]));
      return [
        table,
        'number' in row ? { ...renewed, number: renumber(table, row.number, nth) } : renewed,
      ] as const;
    }),
  );
  const told = tellRows(rows, firstEntries(story, nth));
  let last = handle.prepare('select seq, hash from entry order by seq desc limit 1').get() as EntryRow;
  for (const entry of story.entries) {
    const payload = canonicalJson(JSON.parse(entry.payload, (_key, value) => renew(value) ?? value));
    const ids = { id: `${entry.id}-${nth}`, subject_id: String(renew(entry.subject_id)) };
    const links = { seq: last.seq + 1, previous_hash: last.hash };
    const next = { ...entry, ...ids, ...links, payload, rows: told.get(ids.id)?.text() ?? '{}' };
    last = { ...next, hash: hashEntry(next) };
    write('entry', { ...last });
  }
  for (const [table, row] of rows) write(table, row);
  handle.exec('commit');
}

/** The entry with which each subject came in, under its new id. */
const firstEntries = ({ entries, ids }: Story, nth: number): Map<string, string> =>
  new Map(
    entries
      .toReversed()
      .map(({ id, subject_id }) => [
        ids.has(subject_id) ? `${subject_id}-${nth}` : subject_id,
        `${id}-${nth}`,
      ]),
  );

/** What each entry says of its rows; those of a batch hang on the entry that started it, an order's on its first. */
function tellRows(
  rows: readonly (readonly [table: string, row: Row])[],
  firstEntry: ReadonlyMap<string, string>,
): Map<string, RowStory> {
  const entryOfBatch = new Map(
    rows.flatMap(([table, row]) => (table === 'batch' ? [[row.id, row.entry_id]] : [])),
  );
  const told = new Map<string, RowStory>();
  for (const [table, row] of rows) {
    const entryId = String(
      row.entry_id ??
        entryOfBatch.get(row.batch_id ?? null) ??
        firstEntry.get(String(row.order_id ?? row.id)),
    );
    const story = told.get(entryId) ?? new RowStory();
    story.add(table, row);
    told.set(entryId, story);
  }
  return told;
}
