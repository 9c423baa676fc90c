import { type Selectable, sql } from 'kysely';
import type { BatchCloseTable, BatchLineTable, BatchTable, BatchTinTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type BatchRow = Selectable<BatchTable>;
export type BatchLineRow = Selectable<BatchLineTable>;
export type BatchTinRow = Selectable<BatchTinTable>;
export type BatchCloseRow = Selectable<BatchCloseTable>;

/** The last resize of a batch that stands. */
const standingResize = (db: Reader, batch: 'batch.id' | 'batch_line.batch_id' | 'batch_tin.batch_id') =>
  db
    .selectFrom('batch_resize')
    .innerJoin('entry as resize_entry', 'resize_entry.id', 'batch_resize.entry_id')
    .leftJoin('strike as resize_strike', 'resize_strike.struck_entry_id', 'batch_resize.entry_id')
    .whereRef('batch_resize.batch_id', '=', sql.ref(batch))
    .where('resize_strike.entry_id', 'is', null)
    .orderBy('resize_entry.seq', 'desc')
    .limit(1);

/** A batch with the names that belong to it, and how it ended where it has. Planned grams are those of now. */
export interface BatchHead extends BatchRow {
  /** What it was begun with. */
  readonly begun_ug: number;
  readonly formula_name: string;
  readonly formula_kind: string;
  readonly revision_number: number;
  readonly started_by: string;
  readonly outcome: string | null;
  readonly yield_ug: number | null;
  readonly lot_id: string | null;
  readonly closed_at: string | null;
  readonly closed_by: string | null;
  /** Why it was given up. */
  readonly close_reason: string | null;
}

const selectHeads = (db: Reader) =>
  db
    .selectFrom('batch')
    .innerJoin('formula', 'formula.id', 'batch.formula_id')
    .innerJoin('revision', 'revision.id', 'batch.revision_id')
    .innerJoin('entry as started', 'started.id', 'batch.entry_id')
    .leftJoin('person as starter', 'starter.id', 'started.person_id')
    .leftJoin('batch_close', 'batch_close.batch_id', 'batch.id')
    .leftJoin('entry as closed', 'closed.id', 'batch_close.entry_id')
    .leftJoin('person as closer', 'closer.id', 'closed.person_id')
    .selectAll('batch')
    .select(['formula.name as formula_name', 'formula.kind as formula_kind'])
    .select(['revision.number as revision_number', 'starter.name as starter_name'])
    .select(['batch_close.outcome', 'batch_close.yield_ug', 'batch_close.lot_id'])
    .select(['closed.happened_at as closed_at', 'closer.name as closed_by'])
    .select('batch_close.reason as close_reason')
    .select(standingResize(db, 'batch.id').select('batch_resize.planned_ug').as('resized_ug'));

type SelectedHead = Awaited<ReturnType<ReturnType<typeof selectHeads>['execute']>>[number];

const headOf = ({ starter_name, resized_ug, ...row }: SelectedHead): BatchHead => ({
  ...row,
  planned_ug: resized_ug ?? row.planned_ug,
  begun_ug: row.planned_ug,
  started_by: starter_name ?? '',
});

export async function findBatch(db: Reader, id: string): Promise<BatchHead | undefined> {
  const row = await selectHeads(db).where('batch.id', '=', id).executeTakeFirst();
  return row && headOf(row);
}

/** Every batch, the newest first. */
export async function listBatches(db: Reader): Promise<BatchHead[]> {
  const rows = await selectHeads(db)
    .orderBy('batch.started_at', 'desc')
    .orderBy('started.seq', 'desc')
    .execute();
  return rows.map(headOf);
}

/** The highest number given under these letters so far: numbers grow by length first, so that 10000 follows 9999. */
export async function lastBatchNumber(db: Reader, code: string): Promise<string | undefined> {
  const row = await db
    .selectFrom('batch')
    .select('number')
    .where('number', 'like', `${code}-%`)
    .orderBy((order) => order.fn<number>('length', ['number']), 'desc')
    .orderBy('number', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row?.number;
}

export async function insertBatch(
  db: Reader,
  batch: BatchRow,
  lines: readonly BatchLineRow[],
  tins: readonly BatchTinRow[],
): Promise<void> {
  await db.insertInto('batch').values(batch).execute();
  if (lines.length > 0)
    await db
      .insertInto('batch_line')
      .values([...lines])
      .execute();
  if (tins.length > 0)
    await db
      .insertInto('batch_tin')
      .values([...tins])
      .execute();
}

/**
 * A line with what is asked of it now: since the batch was made larger or smaller its targets are others than those it
 * was begun with.
 */
export interface BatchLineNow extends BatchLineRow {
  /** Place in the chain of the entry that its targets are of; null: as begun. */
  readonly asked_after: number | null;
  /** What it was begun with. */
  readonly begun_target_ug: number;
}

/** Lines with the targets of the last resize that stands. */
export const selectLinesNow = (db: Reader) =>
  db
    .selectFrom('batch_line')
    .leftJoin('batch_target', (join) =>
      join
        .onRef('batch_target.batch_id', '=', 'batch_line.batch_id')
        .onRef('batch_target.position', '=', 'batch_line.position')
        .on(
          'batch_target.entry_id',
          '=',
          standingResize(db, 'batch_line.batch_id').select('batch_resize.entry_id'),
        ),
    )
    .leftJoin('entry as asked', 'asked.id', 'batch_target.entry_id')
    .selectAll('batch_line')
    .select(['batch_target.exact_grams as now_exact', 'batch_target.target_ug as now_target'])
    .select(['batch_target.low_ug as now_low', 'batch_target.high_ug as now_high', 'asked.seq as now_seq'])
    .select(['batch_target.scale_id as now_scale', 'batch_target.weighing as now_weighing']);

interface Targets {
  readonly now_exact: string | null;
  readonly now_target: number | null;
  readonly now_low: number | null;
  readonly now_high: number | null;
  readonly now_seq: number | null;
  readonly now_scale: string | null;
  readonly now_weighing: string | null;
}

export const lineNow = <Row extends BatchLineRow & Targets>({
  now_exact,
  now_target,
  now_low,
  now_high,
  now_seq,
  now_scale,
  now_weighing,
  ...row
}: Row) => ({
  ...row,
  scale_id: now_seq === null ? row.scale_id : now_scale,
  weighing: now_weighing ?? row.weighing,
  exact_grams: now_exact ?? row.exact_grams,
  target_ug: now_target ?? row.target_ug,
  low_ug: now_low ?? row.low_ug,
  high_ug: now_high ?? row.high_ug,
  asked_after: now_seq === null ? null : Number(now_seq),
  begun_target_ug: row.target_ug,
});

export interface NamedBatchLine extends BatchLineNow {
  readonly item_name: string;
  readonly lot_number: string;
  readonly scale_name: string | null;
  /** JSON of the material's details; null where the line is a base. */
  readonly material_details: string | null;
}

export async function listBatchLines(db: Reader, batchId: string): Promise<NamedBatchLine[]> {
  const rows = await selectLinesNow(db)
    .innerJoin('lot', 'lot.id', 'batch_line.lot_id')
    .leftJoin('material', 'material.id', 'batch_line.item_id')
    .leftJoin('formula', 'formula.id', 'batch_line.item_id')
    .leftJoin('scale as begun_scale', 'begun_scale.id', 'batch_line.scale_id')
    .leftJoin('scale as now_scale', 'now_scale.id', 'batch_target.scale_id')
    .select(['lot.number as lot_number', 'material.details as material_details'])
    .select(['begun_scale.name as begun_scale_name', 'now_scale.name as now_scale_name'])
    .select(['material.name as material_name', 'formula.name as formula_name'])
    .where('batch_line.batch_id', '=', batchId)
    .orderBy('batch_line.position')
    .execute();
  return rows.map(({ material_name, formula_name, begun_scale_name, now_scale_name, ...row }) => ({
    ...lineNow(row),
    scale_name: row.now_seq === null ? begun_scale_name : now_scale_name,
    item_name: material_name ?? formula_name ?? '',
  }));
}

export async function findBatchLine(
  db: Reader,
  batchId: string,
  position: number,
): Promise<BatchLineNow | undefined> {
  const row = await selectLinesNow(db)
    .where('batch_line.batch_id', '=', batchId)
    .where('batch_line.position', '=', position)
    .executeTakeFirst();
  return row && lineNow(row);
}

/** JSON of the revision's details that the batch is made by. */
export async function findBatchRevisionDetails(db: Reader, batchId: string): Promise<string> {
  const row = await db
    .selectFrom('batch')
    .innerJoin('revision', 'revision.id', 'batch.revision_id')
    .select('revision.details')
    .where('batch.id', '=', batchId)
    .executeTakeFirstOrThrow();
  return row.details;
}

interface BatchTin {
  readonly product_id: string;
  readonly product_name: string;
  readonly units: number;
}

/** Into how many of what it is to be filled: as it was begun, or as it was made larger or smaller. */
export async function listBatchTins(db: Reader, batchId: string): Promise<BatchTin[]> {
  const rows = await db
    .selectFrom('batch_tin')
    .innerJoin('product', 'product.id', 'batch_tin.product_id')
    .select(['batch_tin.product_id', 'product.name as product_name', 'batch_tin.units'])
    .select(standingResize(db, 'batch_tin.batch_id').select('batch_resize.tins').as('tins_now'))
    .where('batch_id', '=', batchId)
    .orderBy('product.name')
    .execute();
  return rows.map(({ tins_now, ...row }) => ({
    ...row,
    units: unitsNow(tins_now, row.product_id) ?? row.units,
  }));
}

const unitsNow = (tins: string | null, productId: string): number | undefined =>
  tins === null ? undefined : (JSON.parse(tins) as Record<string, number>)[productId];

/** What these batches were planned for. */
export async function listTinsOfBatches(
  db: Reader,
  batchIds: readonly string[],
): Promise<{ batch_id: string; product_id: string; product_name: string; units: number }[]> {
  if (batchIds.length === 0) return [];
  return db
    .selectFrom('batch_tin')
    .innerJoin('product', 'product.id', 'batch_tin.product_id')
    .select(['batch_tin.batch_id', 'batch_tin.product_id', 'product.name as product_name', 'batch_tin.units'])
    .where('batch_id', 'in', batchIds)
    .orderBy('product.name')
    .execute();
}

export async function insertBatchClose(db: Reader, row: BatchCloseRow): Promise<void> {
  await db.insertInto('batch_close').values(row).execute();
}
