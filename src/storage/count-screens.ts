import { judgePosition } from '../core/making/index.ts';
import { additionOf, type SignedAddition, selectAdditions } from './batch-record-store.ts';
import { type BatchLineNow, lineNow, selectLinesNow } from './batch-store.ts';
import type { Reader } from './storage.ts';

/** How many screens each batch has, and how many of them are done: for lists, in a few queries however many there are. */
export async function countScreens(db: Reader): Promise<Map<string, { total: number; done: number }>> {
  const counts = new Map<string, { total: number; done: number }>();
  const count = (field: 'total' | 'done', rows: readonly { batch_id: string; n: number }[]) => {
    for (const row of rows) {
      const known = counts.get(row.batch_id) ?? { total: 0, done: 0 };
      known[field] += Number(row.n);
      counts.set(row.batch_id, known);
    }
  };
  count('total', await countLines(db));
  count('total', await countSteps(db));
  const changed = await listChangedIds(db);
  count('done', await countWeighed(db, changed));
  count('done', await countWeighedOfChanged(db, changed));
  count('done', await countStepRecords(db));
  return counts;
}

const countLines = (db: Reader) =>
  db
    .selectFrom('batch_line')
    .select('batch_id')
    .select((query) => query.fn.countAll<number>().as('n'))
    .groupBy('batch_id')
    .execute();

const countSteps = (db: Reader) =>
  db
    .selectFrom('batch')
    .innerJoin('revision_step', 'revision_step.revision_id', 'batch.revision_id')
    .select('batch.id as batch_id')
    .select((query) => query.fn.countAll<number>().as('n'))
    .groupBy('batch.id')
    .execute();

/** Batches in which what was weighed may be too little now: targets were made anew, or a weighing was struck. */
async function listChangedIds(db: Reader): Promise<string[]> {
  const resized = await db.selectFrom('batch_resize').select('batch_id').distinct().execute();
  const struck = await db
    .selectFrom('addition')
    .innerJoin('strike', 'strike.struck_entry_id', 'addition.entry_id')
    .select('addition.batch_id')
    .distinct()
    .execute();
  return [...new Set([...resized, ...struck].map((row) => row.batch_id))];
}

/** Struck ones left out, here and below. A position that is weighed in parts counts once its last part is in. */
async function countWeighed(db: Reader, changed: readonly string[]) {
  const rows = await db
    .selectFrom('addition')
    .leftJoin('strike', 'strike.struck_entry_id', 'addition.entry_id')
    .leftJoin('addition_close', 'addition_close.after_entry_id', 'addition.entry_id')
    .select(['addition.batch_id', 'addition.position'])
    .distinct()
    .where('strike.entry_id', 'is', null)
    .where((where) =>
      where.or([where('addition.is_part', 'is', null), where('addition_close.entry_id', 'is not', null)]),
    )
    .execute();
  const isElsewhere = new Set(changed);
  return rows.flatMap(({ batch_id }) => (isElsewhere.has(batch_id) ? [] : [{ batch_id, n: 1 }]));
}

async function countWeighedOfChanged(db: Reader, ids: readonly string[]) {
  if (ids.length === 0) return [];
  const lines = (await selectLinesNow(db).where('batch_line.batch_id', 'in', ids).execute()).map(lineNow);
  const rows = await selectAdditions(db).where('addition.batch_id', 'in', ids).orderBy('entry.seq').execute();
  const additions = rows.map(additionOf);
  return lines.flatMap((line) => (isWeighedIn(line, additions) ? [{ batch_id: line.batch_id, n: 1 }] : []));
}

/** How far a line of a batch is weighed in, by the additions of all batches that were asked for, struck ones too. */
export function judgeLine(line: BatchLineNow, additions: readonly SignedAddition[]) {
  const own = additions.filter((row) => row.batch_id === line.batch_id && row.position === line.position);
  const standing = own.filter((row) => !row.is_struck);
  return judgePosition(
    standing.map((row) => ({
      ug: row.actual_ug,
      isPart: row.is_part === 1,
      endedSeq: row.ended_seq,
      seq: row.seq,
    })),
    { targetUg: line.target_ug, lowUg: line.low_ug, askedAfter: latestOf(line.asked_after, own) },
  );
}

/** Where a part that came before the last weighing was struck since, more is asked for again, as after a resize. */
function latestOf(askedAfter: number | null, own: readonly SignedAddition[]): number | null {
  const last = own.findLast((row) => !row.is_struck);
  const struck = own.flatMap(({ seq, struck_seq }) =>
    last && struck_seq !== null && seq < last.seq ? [struck_seq] : [],
  );
  const all = askedAfter === null ? struck : [...struck, askedAfter];
  return all.length > 0 ? Math.max(...all) : null;
}

const isWeighedIn = (line: BatchLineNow, additions: readonly SignedAddition[]): boolean =>
  judgeLine(line, additions).isDone;

const countStepRecords = (db: Reader) =>
  db
    .selectFrom('step_record')
    .leftJoin('strike', 'strike.struck_entry_id', 'step_record.entry_id')
    .select('step_record.batch_id')
    .select((query) => query.fn.countAll<number>().as('n'))
    .where('strike.entry_id', 'is', null)
    .groupBy('step_record.batch_id')
    .execute();
