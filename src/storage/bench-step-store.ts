import type { Selectable } from 'kysely';
import type { StepBegunTable, WhipRoundTable } from './schema-steps.ts';
import type { Reader } from './storage.ts';

export type StepBegunRow = Selectable<StepBegunTable>;
export type WhipRoundRow = Selectable<WhipRoundTable>;

interface SignedAtBench {
  readonly happened_at: string;
  readonly person_name: string;
  readonly is_struck: boolean;
}
export type SignedBegun = StepBegunRow & SignedAtBench;
export type SignedRound = WhipRoundRow & SignedAtBench;

interface Joined {
  readonly person_name: string | null;
  readonly strike_id: string | null;
}
const signed = <Row extends Joined>({ person_name, strike_id, ...row }: Row) => ({
  ...row,
  person_name: person_name ?? '',
  is_struck: strike_id !== null,
});

/** Every beginning of a step of a batch, struck ones too, in the order of entry. */
export async function listStepsBegun(db: Reader, batchId: string): Promise<SignedBegun[]> {
  const rows = await db
    .selectFrom('step_begun')
    .innerJoin('entry', 'entry.id', 'step_begun.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .leftJoin('strike', 'strike.struck_entry_id', 'step_begun.entry_id')
    .selectAll('step_begun')
    .select(['entry.happened_at', 'person.name as person_name', 'strike.entry_id as strike_id'])
    .where('step_begun.batch_id', '=', batchId)
    .orderBy('entry.seq')
    .execute();
  return rows.map(signed);
}

/** Every round of whipping of these batches, struck ones too, in the order of entry. */
export async function listWhipRounds(db: Reader, batchIds: readonly string[]): Promise<SignedRound[]> {
  if (batchIds.length === 0) return [];
  const rows = await db
    .selectFrom('whip_round')
    .innerJoin('entry', 'entry.id', 'whip_round.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .leftJoin('strike', 'strike.struck_entry_id', 'whip_round.entry_id')
    .selectAll('whip_round')
    .select(['entry.happened_at', 'person.name as person_name', 'strike.entry_id as strike_id'])
    .where('whip_round.batch_id', 'in', batchIds)
    .orderBy('entry.seq')
    .execute();
  return rows.map(signed);
}

export async function insertStepBegun(db: Reader, row: StepBegunRow): Promise<void> {
  await db.insertInto('step_begun').values(row).execute();
}

export async function insertWhipRound(db: Reader, row: WhipRoundRow): Promise<void> {
  await db.insertInto('whip_round').values(row).execute();
}

/** The newest batches of a formula, this one left out. */
export async function listEarlierBatches(
  db: Reader,
  {
    formulaId,
    exceptId,
    newest,
  }: { readonly formulaId: string; readonly exceptId: string; readonly newest: number },
): Promise<string[]> {
  const rows = await db
    .selectFrom('batch')
    .innerJoin('entry', 'entry.id', 'batch.entry_id')
    .select('batch.id')
    .where('batch.formula_id', '=', formulaId)
    .where('batch.id', '!=', exceptId)
    .orderBy('entry.seq', 'desc')
    .limit(newest)
    .execute();
  return rows.map((row) => row.id);
}

/** What steps of these batches weighed, struck records left out, in the order of entry. */
export const listStepsWeighed = async (
  db: Reader,
  batchIds: readonly string[],
): Promise<{ batch_id: string; weighed: string }[]> => {
  if (batchIds.length === 0) return [];
  const rows = await db
    .selectFrom('step_record')
    .innerJoin('entry', 'entry.id', 'step_record.entry_id')
    .leftJoin('strike', 'strike.struck_entry_id', 'step_record.entry_id')
    .select(['step_record.batch_id', 'step_record.weighed'])
    .where('step_record.batch_id', 'in', batchIds)
    .where('step_record.weighed', 'is not', null)
    .where('strike.entry_id', 'is', null)
    .orderBy('entry.seq')
    .execute();
  return rows.map(({ batch_id, weighed }) => ({ batch_id, weighed: weighed ?? '' }));
};
