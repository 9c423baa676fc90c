import type { Selectable } from 'kysely';
import type {
  AdditionTable,
  DeviationTable,
  RevisionStepTable,
  StepRecordTable,
  StrikeTable,
} from './schema.ts';
import type { Reader } from './storage.ts';

/** Who entered a record, when, and whether it was struck since. */
export interface Signed {
  readonly happened_at: string;
  readonly person_name: string;
  readonly is_struck: boolean;
  readonly strike_reason: string | null;
}
export type AdditionRow = Selectable<AdditionTable>;
export type StepRecordRow = Selectable<StepRecordTable>;
export type DeviationRow = Selectable<DeviationTable>;

interface Joined {
  readonly happened_at: string;
  readonly person_name: string | null;
  readonly strike_id: string | null;
}
const signed = <Row extends Joined>({ person_name, strike_id, ...row }: Row) => ({
  ...row,
  person_name: person_name ?? '',
  is_struck: strike_id !== null,
});

export type SignedAddition = AdditionRow &
  Signed & {
    readonly lot_number: string;
    readonly lot_item_id: string;
    readonly lot_item_name: string;
    /** What it was weighed on; null: nobody said. */
    readonly scale_name: string | null;
    /** Its place in the chain. */
    readonly seq: number;
    /** Place of the entry that said last that this is all there is. */
    readonly ended_seq: number | null;
    /** Place of the entry that struck it. */
    readonly struck_seq: number | null;
  };

export const selectAdditions = (db: Reader) =>
  db
    .selectFrom('addition')
    .innerJoin('entry', 'entry.id', 'addition.entry_id')
    .innerJoin('lot', 'lot.id', 'addition.lot_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .leftJoin('strike', 'strike.struck_entry_id', 'addition.entry_id')
    .leftJoin('entry as struck', 'struck.id', 'strike.entry_id')
    .leftJoin('scale as on_scale', 'on_scale.id', 'addition.scale_id')
    .leftJoin('material as lot_material', 'lot_material.id', 'lot.item_id')
    .leftJoin('formula as lot_formula', 'lot_formula.id', 'lot.item_id')
    .selectAll('addition')
    .select(['lot.number as lot_number', 'entry.happened_at', 'person.name as person_name', 'entry.seq'])
    .select(['lot.item_id as lot_item_id', 'struck.seq as struck_seq'])
    .select((query) =>
      query
        .selectFrom('addition_close')
        .innerJoin('entry as ended', 'ended.id', 'addition_close.entry_id')
        .select((close) => close.fn.max('ended.seq').as('seq'))
        .whereRef('addition_close.after_entry_id', '=', 'addition.entry_id')
        .as('ended_seq'),
    )
    .select(['lot_material.name as material_name', 'lot_formula.name as formula_name'])
    .select(['on_scale.name as scale_name'])
    .select(['strike.entry_id as strike_id', 'strike.reason as strike_reason']);

type SelectedAddition = Awaited<ReturnType<ReturnType<typeof selectAdditions>['execute']>>[number];

export const additionOf = ({
  ended_seq,
  struck_seq,
  material_name,
  formula_name,
  seq,
  ...row
}: SelectedAddition): SignedAddition => ({
  ...signed(row),
  seq: Number(seq),
  ended_seq: ended_seq === null ? null : Number(ended_seq),
  struck_seq: struck_seq === null ? null : Number(struck_seq),
  lot_item_name: material_name ?? formula_name ?? '',
});

/** Every weighing-in of a batch, struck ones too, in the order of entry. */
export async function listAdditions(db: Reader, batchId: string): Promise<SignedAddition[]> {
  const rows = await selectAdditions(db)
    .where('addition.batch_id', '=', batchId)
    .orderBy('entry.seq')
    .execute();
  return rows.map(additionOf);
}

/** Lot: when it first went into a batch, whether that was struck since or not. */
export async function listFirstUses(db: Reader, lotIds: readonly string[]): Promise<Map<string, string>> {
  if (lotIds.length === 0) return new Map();
  const rows = await db
    .selectFrom('addition')
    .innerJoin('entry', 'entry.id', 'addition.entry_id')
    .select('addition.lot_id')
    .select((query) => query.fn.min<string>('entry.happened_at').as('first_at'))
    .where('addition.lot_id', 'in', lotIds)
    .groupBy('addition.lot_id')
    .execute();
  return new Map(rows.map((row) => [row.lot_id, row.first_at]));
}

/** What a batch made, and when a weighing was last entered into it, or struck, after it was made. */
export async function listChangedSinceMade(db: Reader): Promise<{ lot_id: string; changed_at: string }[]> {
  const made = db
    .selectFrom('batch_close')
    .innerJoin('entry as closed', 'closed.id', 'batch_close.entry_id')
    .innerJoin('addition', 'addition.batch_id', 'batch_close.batch_id')
    .select('batch_close.lot_id')
    .where('batch_close.lot_id', 'is not', null);
  const entered = await made
    .innerJoin('entry as changed', 'changed.id', 'addition.entry_id')
    .whereRef('changed.seq', '>', 'closed.seq')
    .select('changed.recorded_at as changed_at')
    .execute();
  const struck = await made
    .innerJoin('strike', 'strike.struck_entry_id', 'addition.entry_id')
    .innerJoin('entry as changed', 'changed.id', 'strike.entry_id')
    .whereRef('changed.seq', '>', 'closed.seq')
    .select('changed.recorded_at as changed_at')
    .execute();
  return [...entered, ...struck].map(({ lot_id, changed_at }) => ({ lot_id: lot_id ?? '', changed_at }));
}

/** Lots of bases that stand in these batches as weighed in, by the batch: those that were made here themselves. */
export const listBasesWeighedIn = (
  db: Reader,
  batchIds: readonly string[],
): Promise<{ batch_id: string; lot_id: string }[]> =>
  db
    .selectFrom('addition')
    .innerJoin('lot', 'lot.id', 'addition.lot_id')
    .leftJoin('strike', 'strike.struck_entry_id', 'addition.entry_id')
    .select(['addition.batch_id', 'addition.lot_id'])
    .distinct()
    .where('addition.batch_id', 'in', batchIds)
    .where('lot.batch_id', 'is not', null)
    .where('strike.entry_id', 'is', null)
    .execute();

/** The method's steps of the revision that the batch is made by. */
export const listBatchSteps = (db: Reader, batchId: string): Promise<Selectable<RevisionStepTable>[]> =>
  db
    .selectFrom('batch')
    .innerJoin('revision_step', 'revision_step.revision_id', 'batch.revision_id')
    .selectAll('revision_step')
    .where('batch.id', '=', batchId)
    .orderBy('revision_step.position')
    .execute();

export type SignedStep = StepRecordRow & Signed;

export async function listStepRecords(db: Reader, batchId: string): Promise<SignedStep[]> {
  const rows = await db
    .selectFrom('step_record')
    .innerJoin('entry', 'entry.id', 'step_record.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .leftJoin('strike', 'strike.struck_entry_id', 'step_record.entry_id')
    .selectAll('step_record')
    .select(['entry.happened_at', 'person.name as person_name'])
    .select(['strike.entry_id as strike_id', 'strike.reason as strike_reason'])
    .where('step_record.batch_id', '=', batchId)
    .orderBy('entry.seq')
    .execute();
  return rows.map(signed);
}

export async function listDeviations(
  db: Reader,
  batchId: string,
): Promise<(DeviationRow & { happened_at: string; person_name: string })[]> {
  const rows = await db
    .selectFrom('deviation')
    .innerJoin('entry', 'entry.id', 'deviation.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .selectAll('deviation')
    .select(['entry.happened_at', 'person.name as person_name'])
    .where('deviation.batch_id', '=', batchId)
    .orderBy('entry.seq')
    .execute();
  return rows.map((row) => ({ ...row, person_name: row.person_name ?? '' }));
}

export interface SignedStrike {
  readonly struck_entry_id: string;
  readonly reason: string;
  readonly happened_at: string;
  readonly person_name: string;
}

/** Who struck which entry of a batch, when and why. */
export async function listStrikesOfBatch(db: Reader, batchId: string): Promise<SignedStrike[]> {
  const rows = await db
    .selectFrom('strike')
    .innerJoin('entry', 'entry.id', 'strike.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .select(['strike.struck_entry_id', 'strike.reason', 'entry.happened_at', 'person.name as person_name'])
    .where((where) =>
      where.or([
        where(
          'strike.struck_entry_id',
          'in',
          where.selectFrom('addition').select('entry_id').where('batch_id', '=', batchId),
        ),
        where(
          'strike.struck_entry_id',
          'in',
          where.selectFrom('step_record').select('entry_id').where('batch_id', '=', batchId),
        ),
        where(
          'strike.struck_entry_id',
          'in',
          where.selectFrom('step_begun').select('entry_id').where('batch_id', '=', batchId),
        ),
        where(
          'strike.struck_entry_id',
          'in',
          where.selectFrom('whip_round').select('entry_id').where('batch_id', '=', batchId),
        ),
        where(
          'strike.struck_entry_id',
          'in',
          where.selectFrom('batch_resize').select('entry_id').where('batch_id', '=', batchId),
        ),
        where(
          'strike.struck_entry_id',
          'in',
          where.selectFrom('spill').select('entry_id').where('batch_id', '=', batchId),
        ),
      ]),
    )
    .orderBy('entry.seq')
    .execute();
  return rows.map((row) => ({ ...row, person_name: row.person_name ?? '' }));
}

/** The weighings-in at one position, struck ones too, in the order of entry. */
export async function listAdditionsAt(
  db: Reader,
  batchId: string,
  position: number,
): Promise<SignedAddition[]> {
  const rows = await selectAdditions(db)
    .where('addition.batch_id', '=', batchId)
    .where('addition.position', '=', position)
    .orderBy('entry.seq')
    .execute();
  return rows.map(additionOf);
}

export async function insertAddition(db: Reader, row: AdditionRow): Promise<void> {
  await db.insertInto('addition').values(row).execute();
}

export async function insertStepRecord(db: Reader, row: StepRecordRow): Promise<void> {
  await db.insertInto('step_record').values(row).execute();
}

export async function insertDeviation(db: Reader, row: DeviationRow): Promise<void> {
  await db.insertInto('deviation').values(row).execute();
}

export async function insertStrike(db: Reader, row: Selectable<StrikeTable>): Promise<void> {
  await db.insertInto('strike').values(row).execute();
}
