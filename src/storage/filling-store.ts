import type { Selectable } from 'kysely';
import { type FillWayRow, findFillWays } from './run-ready-store.ts';
import type {
  FillingRunTable,
  FillWeightTable,
  LabelPrintTable,
  ReleaseTable,
  RunCloseTable,
} from './schema.ts';
import type { Reader } from './storage.ts';

export type FillingRunRow = Selectable<FillingRunTable>;
export type FillWeightRow = Selectable<FillWeightTable>;
export type RunCloseRow = Selectable<RunCloseTable>;
export type ReleaseRow = Selectable<ReleaseTable>;
export type LabelPrintRow = Selectable<LabelPrintTable>;

export interface RunHead extends FillingRunRow {
  readonly batch_number: string;
  readonly formula_id: string;
  readonly revision_id: string;
  readonly purpose: string;
  /** The mixture in its bowl. */
  readonly bulk_lot_id: string | null;
  readonly made_at: string | null;
  /** As the batch was planned. */
  readonly planned_sample_ug: number | null;
  readonly is_closed: boolean;
  readonly verdict: string | null;
  /** How tins are weighed by now: tare, aim and error above are those of this way. null: as before there were several. */
  readonly way: FillWayRow | null;
  /** What stands for weights from before there were several ways. */
  readonly begun_error_ug: number;
}

const selectRuns = (db: Reader) =>
  db
    .selectFrom('filling_run')
    .innerJoin('batch', 'batch.id', 'filling_run.batch_id')
    .innerJoin('entry as started', 'started.id', 'filling_run.entry_id')
    .leftJoin('batch_close', 'batch_close.batch_id', 'batch.id')
    .leftJoin('entry as closed', 'closed.id', 'batch_close.entry_id')
    .leftJoin('run_close', 'run_close.filling_run_id', 'filling_run.id')
    .leftJoin('release', 'release.filling_run_id', 'filling_run.id')
    .selectAll('filling_run')
    .select(['batch.number as batch_number', 'batch.formula_id', 'batch.revision_id', 'batch.purpose'])
    .select('batch.retained_ug as planned_sample_ug')
    .select(['batch_close.lot_id as bulk_lot_id', 'closed.happened_at as made_at'])
    .select(['run_close.entry_id as close_id', 'release.verdict'])
    .orderBy('started.seq', 'desc');

type SelectedRun = Awaited<ReturnType<ReturnType<typeof selectRuns>['execute']>>[number];

/** Each with the way in which its tins are weighed by now. */
async function runsOf(db: Reader, rows: readonly SelectedRun[]): Promise<RunHead[]> {
  const ways = await findFillWays(
    db,
    rows.map((row) => row.id),
  );
  return rows.map(({ close_id, ...row }) => {
    const way = ways.get(row.id) ?? null;
    const begun = { way, is_closed: close_id !== null, begun_error_ug: row.scale_error_ug };
    const now = way && { tare_ug: way.tare_ug, aim_ug: way.aim_ug, scale_error_ug: way.error_ug };
    return { ...row, ...begun, ...now };
  });
}

export async function findRun(db: Reader, id: string): Promise<RunHead | undefined> {
  const rows = await selectRuns(db).where('filling_run.id', '=', id).execute();
  return (await runsOf(db, rows))[0];
}

/** Every run that filled this product, the newest first. */
export async function listRunsOfProduct(db: Reader, productId: string): Promise<RunHead[]> {
  const rows = await selectRuns(db).where('filling_run.product_id', '=', productId).execute();
  return runsOf(db, rows);
}

/** Runs that were filled to their end, the newest first: so many of them tell how it goes these days. */
export async function listClosedRuns(db: Reader, newest = 200): Promise<RunHead[]> {
  const rows = await selectRuns(db).where('run_close.entry_id', 'is not', null).limit(newest).execute();
  return runsOf(db, rows);
}

/** Released runs whose tins are these lots. */
export async function listReleasedRuns(db: Reader, tinsLotIds: readonly string[]): Promise<RunHead[]> {
  if (tinsLotIds.length === 0) return [];
  const rows = await selectRuns(db)
    .where('run_close.lot_id', 'in', tinsLotIds)
    .where('release.verdict', '=', 'released')
    .execute();
  return runsOf(db, rows);
}

/** The newest runs, and every older one that waits for its release. */
export async function listRunsAtHand(db: Reader, newest: number): Promise<RunHead[]> {
  const latest = await selectRuns(db).limit(newest).execute();
  const waiting = await selectRuns(db).where('release.entry_id', 'is', null).execute();
  const seen = new Set(latest.map((row) => row.id));
  return runsOf(db, [...latest, ...waiting.filter((row) => !seen.has(row.id))]);
}

/** Every run of these batches, in the order of their start. */
export async function listRunsOfBatches(db: Reader, batchIds: readonly string[]): Promise<RunHead[]> {
  if (batchIds.length === 0) return [];
  const rows = await selectRuns(db).where('filling_run.batch_id', 'in', batchIds).execute();
  return runsOf(db, rows.reverse());
}

export async function countRunsOfBatch(db: Reader, batchId: string): Promise<number> {
  const row = await db
    .selectFrom('filling_run')
    .select((query) => query.fn.countAll<number>().as('n'))
    .where('batch_id', '=', batchId)
    .executeTakeFirstOrThrow();
  return Number(row.n);
}

export interface RunState {
  readonly id: string;
  readonly batch_id: string;
  readonly product_id: string;
  readonly number: string;
  readonly product_details: string;
  readonly is_closed: boolean;
  readonly verdict: string | null;
}

/** How each run of these batches stands (of all, where no batches are named), in the order of their start. */
export async function listRunStates(db: Reader, batchIds?: readonly string[]): Promise<RunState[]> {
  let query = db
    .selectFrom('filling_run')
    .innerJoin('entry', 'entry.id', 'filling_run.entry_id')
    .leftJoin('run_close', 'run_close.filling_run_id', 'filling_run.id')
    .leftJoin('release', 'release.filling_run_id', 'filling_run.id')
    .select([
      'filling_run.id',
      'filling_run.batch_id',
      'filling_run.number',
      'filling_run.product_id',
      'filling_run.product_details',
    ])
    .select(['run_close.entry_id as close_id', 'release.verdict'])
    .orderBy('entry.seq');
  if (batchIds) query = query.where('filling_run.batch_id', 'in', batchIds);
  const rows = await query.execute();
  return rows.map(({ close_id, ...row }) => ({ ...row, is_closed: close_id !== null }));
}

export async function insertRun(db: Reader, row: FillingRunRow): Promise<void> {
  await db.insertInto('filling_run').values(row).execute();
}

export interface SignedWeight extends FillWeightRow {
  readonly happened_at: string;
  readonly person_name: string;
  readonly is_struck: boolean;
  /** What became of a tin that was taken out; null: it was not, or nobody said. */
  readonly fate: string | null;
  /** Its tin was filled up and weighed again: the later weight counts. */
  readonly is_refilled: boolean;
  /** Which tin of the run it is: one that is weighed again keeps its number. */
  readonly tin: number;
}

/** Every weight of these runs, struck ones too, in the order of weighing. */
export async function listFillWeights(db: Reader, runIds: readonly string[]): Promise<SignedWeight[]> {
  if (runIds.length === 0) return [];
  const rows = await db
    .selectFrom('fill_weight')
    .innerJoin('entry', 'entry.id', 'fill_weight.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .leftJoin('strike', 'strike.struck_entry_id', 'fill_weight.entry_id')
    .leftJoin('tin_fate', 'tin_fate.entry_id', 'strike.entry_id')
    .selectAll('fill_weight')
    .select([
      'entry.happened_at',
      'person.name as person_name',
      'strike.entry_id as strike_id',
      'tin_fate.fate',
    ])
    .where('fill_weight.filling_run_id', 'in', runIds)
    .orderBy('fill_weight.filling_run_id')
    .orderBy('fill_weight.number')
    .execute();
  const weights = rows.map(({ strike_id, ...row }) => ({
    ...row,
    person_name: row.person_name ?? '',
    is_struck: strike_id !== null,
  }));
  return numberTins(weights);
}

type Weighed = Omit<SignedWeight, 'is_refilled' | 'tin'>;

/**
 * A later weight of a tin takes the place of the one before, also where the tin was taken out afterwards; only a later
 * weight that was a slip leaves it as it was.
 */
function numberTins(weights: readonly Weighed[]): SignedWeight[] {
  const again = new Set(
    weights.flatMap((row) => (row.refill_of !== null && row.fate !== 'slip' ? [row.refill_of] : [])),
  );
  const tins = new Map<string, number>();
  const last = new Map<string, number>();
  return weights.map((row) => {
    const earlier = row.refill_of === null ? undefined : tins.get(row.refill_of);
    const tin = earlier ?? (last.get(row.filling_run_id) ?? 0) + 1;
    if (earlier === undefined) last.set(row.filling_run_id, tin);
    tins.set(row.entry_id, tin);
    return { ...row, tin, is_refilled: again.has(row.entry_id) };
  });
}

export async function nextWeightNumber(db: Reader, runId: string): Promise<number> {
  const row = await db
    .selectFrom('fill_weight')
    .select((query) => query.fn.max('number').as('last'))
    .where('filling_run_id', '=', runId)
    .executeTakeFirst();
  return (row?.last ?? 0) + 1;
}

export async function insertFillWeight(db: Reader, row: FillWeightRow): Promise<void> {
  await db.insertInto('fill_weight').values(row).execute();
}

export type SignedClose = RunCloseRow & { readonly happened_at: string; readonly person_name: string };

export async function listRunCloses(db: Reader, runIds: readonly string[]): Promise<SignedClose[]> {
  if (runIds.length === 0) return [];
  const rows = await db
    .selectFrom('run_close')
    .innerJoin('entry', 'entry.id', 'run_close.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .selectAll('run_close')
    .select(['entry.happened_at', 'person.name as person_name'])
    .where('run_close.filling_run_id', 'in', runIds)
    .execute();
  return rows.map((row) => ({ ...row, person_name: row.person_name ?? '' }));
}

export async function insertRunClose(db: Reader, row: RunCloseRow): Promise<void> {
  await db.insertInto('run_close').values(row).execute();
}

export type SignedRelease = ReleaseRow & { readonly happened_at: string; readonly person_name: string };

export async function listReleases(db: Reader, runIds: readonly string[]): Promise<SignedRelease[]> {
  if (runIds.length === 0) return [];
  const rows = await db
    .selectFrom('release')
    .innerJoin('entry', 'entry.id', 'release.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .selectAll('release')
    .select(['entry.happened_at', 'person.name as person_name'])
    .where('release.filling_run_id', 'in', runIds)
    .execute();
  return rows.map((row) => ({ ...row, person_name: row.person_name ?? '' }));
}

export async function insertRelease(db: Reader, row: ReleaseRow): Promise<void> {
  await db.insertInto('release').values(row).execute();
}

export type LabelCopies = Pick<LabelPrintRow, 'filling_run_id' | 'market' | 'copies' | 'design'> & {
  readonly happened_at: string;
};

/** What was printed for these runs, and how many of each; the newest first. */
export async function listLabelCopies(db: Reader, runIds: readonly string[]): Promise<LabelCopies[]> {
  if (runIds.length === 0) return [];
  return db
    .selectFrom('label_print')
    .innerJoin('entry', 'entry.id', 'label_print.entry_id')
    .select(['filling_run_id', 'market', 'copies', 'design', 'entry.happened_at'])
    .where('filling_run_id', 'in', runIds)
    .orderBy('entry.seq', 'desc')
    .execute();
}

export const findLabelPrint = (db: Reader, id: string): Promise<LabelPrintRow | undefined> =>
  db.selectFrom('label_print').selectAll().where('entry_id', '=', id).executeTakeFirst();

export async function insertLabelPrint(db: Reader, row: LabelPrintRow): Promise<void> {
  await db.insertInto('label_print').values(row).execute();
}

export interface RunMovement {
  readonly lot_id: string;
  readonly kind: string;
  readonly quantity: number;
}

/** What a run moved, by lot and kind: its bowl, its packaging, its tins. */
export async function sumRunMovements(db: Reader, runId: string): Promise<RunMovement[]> {
  const rows = await db
    .selectFrom('movement')
    .select(['lot_id', 'kind'])
    .select((query) => query.fn.sum<number>('quantity').as('quantity'))
    .where('filling_run_id', '=', runId)
    .groupBy(['lot_id', 'kind'])
    .execute();
  return rows.map((row) => ({ ...row, quantity: Number(row.quantity) }));
}
