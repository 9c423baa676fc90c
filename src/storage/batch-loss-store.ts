import type { Reader } from './storage.ts';

/** What went into a batch that was filled to its end, and what stayed behind in making and filling. */
export interface BatchLossRow {
  readonly batch_id: string;
  readonly formula_id: string;
  readonly purpose: string;
  readonly in_ug: number;
  readonly lost_ug: number;
}

/** Batches of which runs were closed and none is open, the newest first. */
export async function listBatchLosses(db: Reader): Promise<BatchLossRow[]> {
  const made = await db
    .selectFrom('batch_close')
    .innerJoin('batch', 'batch.id', 'batch_close.batch_id')
    .innerJoin('entry', 'entry.id', 'batch_close.entry_id')
    .select(['batch.id', 'batch.formula_id', 'batch.purpose', 'batch_close.yield_ug'])
    .where('batch_close.outcome', '=', 'made')
    .orderBy('entry.seq', 'desc')
    .execute();
  const filled = await sumFilled(db);
  const went = await sumWentIn(db);
  return made.flatMap(({ id, formula_id, purpose, yield_ug }) => {
    const runs = filled.get(id);
    const in_ug = went.get(id) ?? 0;
    if (!runs || runs.isOpen || yield_ug === null || in_ug === 0) return [];
    return [{ batch_id: id, formula_id, purpose, in_ug, lost_ug: in_ug - yield_ug + runs.lost_ug }];
  });
}

async function sumFilled(db: Reader) {
  const rows = await db
    .selectFrom('filling_run')
    .leftJoin('run_close', 'run_close.filling_run_id', 'filling_run.id')
    .select(['filling_run.batch_id', 'run_close.lost_ug'])
    .execute();
  const byBatch = new Map<string, { lost_ug: number; isOpen: boolean }>();
  for (const row of rows) {
    const before = byBatch.get(row.batch_id) ?? { lost_ug: 0, isOpen: false };
    byBatch.set(row.batch_id, {
      lost_ug: before.lost_ug + (row.lost_ug ?? 0),
      isOpen: before.isOpen || row.lost_ug === null,
    });
  }
  return byBatch;
}

async function sumWentIn(db: Reader): Promise<ReadonlyMap<string, number>> {
  const rows = await db
    .selectFrom('addition')
    .leftJoin('strike', 'strike.struck_entry_id', 'addition.entry_id')
    .select('addition.batch_id')
    .select((query) => query.fn.sum<number>('addition.actual_ug').as('in_ug'))
    .where('strike.entry_id', 'is', null)
    .groupBy('addition.batch_id')
    .execute();
  return new Map(rows.map((row) => [row.batch_id, Number(row.in_ug)]));
}
