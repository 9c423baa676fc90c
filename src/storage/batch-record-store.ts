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

export type SignedAddition = AdditionRow & Signed & { readonly lot_number: string };

const selectAdditions = (db: Reader) =>
  db
    .selectFrom('addition')
    .innerJoin('entry', 'entry.id', 'addition.entry_id')
    .innerJoin('lot', 'lot.id', 'addition.lot_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .leftJoin('strike', 'strike.struck_entry_id', 'addition.entry_id')
    .selectAll('addition')
    .select(['lot.number as lot_number', 'entry.happened_at', 'person.name as person_name'])
    .select(['strike.entry_id as strike_id', 'strike.reason as strike_reason']);

/** The weighing-in that an entry wrote, with the line it was for. */
export async function findAdditionOfEntry(db: Reader, entryId: string) {
  const row = await selectAdditions(db)
    .innerJoin('batch_line', (join) =>
      join
        .onRef('batch_line.batch_id', '=', 'addition.batch_id')
        .onRef('batch_line.position', '=', 'addition.position'),
    )
    .select(['batch_line.low_ug', 'batch_line.high_ug'])
    .where('addition.entry_id', '=', entryId)
    .executeTakeFirst();
  return row && signed(row);
}

/** Every weighing-in of a batch, struck ones too, in the order of entry. */
export async function listAdditions(db: Reader, batchId: string): Promise<SignedAddition[]> {
  const rows = await selectAdditions(db)
    .where('addition.batch_id', '=', batchId)
    .orderBy('entry.seq')
    .execute();
  return rows.map(signed);
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
      ]),
    )
    .orderBy('entry.seq')
    .execute();
  return rows.map((row) => ({ ...row, person_name: row.person_name ?? '' }));
}

/** The weighings-in at one position, struck ones too: hardly ever more than one. */
export async function listAdditionsAt(
  db: Reader,
  batchId: string,
  position: number,
): Promise<SignedAddition[]> {
  const rows = await selectAdditions(db)
    .where('addition.batch_id', '=', batchId)
    .where('addition.position', '=', position)
    .execute();
  return rows.map(signed);
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

/** How many screens each batch has, and how many of them are done: for lists, in four queries however many there are. */
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
  count('done', await countAdditions(db));
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

/** Struck ones left out, here and below. */
const countAdditions = (db: Reader) =>
  db
    .selectFrom('addition')
    .leftJoin('strike', 'strike.struck_entry_id', 'addition.entry_id')
    .select('addition.batch_id')
    .select((query) => query.fn.countAll<number>().as('n'))
    .where('strike.entry_id', 'is', null)
    .groupBy('addition.batch_id')
    .execute();

const countStepRecords = (db: Reader) =>
  db
    .selectFrom('step_record')
    .leftJoin('strike', 'strike.struck_entry_id', 'step_record.entry_id')
    .select('step_record.batch_id')
    .select((query) => query.fn.countAll<number>().as('n'))
    .where('strike.entry_id', 'is', null)
    .groupBy('step_record.batch_id')
    .execute();
