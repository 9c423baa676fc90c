import type { Insertable, Selectable } from 'kysely';
import type { ClaimAnswerTable, ClaimTable } from './schema-away.ts';
import type { Reader } from './storage.ts';
import type { Writer } from './write.ts';

export type ClaimRow = Selectable<ClaimTable>;

/** A claim with who brought it in, and its answer where it has one. */
export interface SignedClaim extends ClaimRow {
  readonly recorded_at: string;
  /** When it was brought in by that tablet's clock, and by the workshop's: what the one is off. */
  readonly told_at: string;
  readonly by_name: string | null;
  /** Who brought it in: vouches for nobody else. */
  readonly told_by: string | null;
  readonly answer: string | null;
  readonly answer_reason: string | null;
  readonly answered_at: string | null;
  readonly answered_by: string | null;
}

const selectClaims = (db: Reader) =>
  db
    .selectFrom('claim')
    .innerJoin('entry', 'entry.id', 'claim.entry_id')
    .leftJoin('person', 'person.id', 'claim.by_id')
    .leftJoin('claim_answer', 'claim_answer.claim_entry_id', 'claim.entry_id')
    .leftJoin('entry as answered', 'answered.id', 'claim_answer.entry_id')
    .leftJoin('person as answerer', 'answerer.id', 'answered.person_id')
    .selectAll('claim')
    .select(['entry.recorded_at', 'entry.happened_at as told_at', 'entry.person_id as told_by'])
    .select(['person.name as by_name'])
    .select(['claim_answer.answer', 'claim_answer.reason as answer_reason'])
    .select(['answered.happened_at as answered_at', 'answerer.name as answered_by']);

export const findClaim = (db: Reader, entryId: string): Promise<SignedClaim | undefined> =>
  selectClaims(db).where('claim.entry_id', '=', entryId).executeTakeFirst();

/** The claim that a kept entry became already. */
export const findClaimOfKept = (db: Reader, keptId: string): Promise<SignedClaim | undefined> =>
  selectClaims(db).where('claim.kept_id', '=', keptId).executeTakeFirst();

/** All of a batch or a filling run, answered or not, in the order in which they came. */
export const listClaimsOf = (db: Reader, subjectKind: string, subjectId: string): Promise<SignedClaim[]> =>
  selectClaims(db)
    .where('claim.subject_kind', '=', subjectKind)
    .where('claim.subject_id', '=', subjectId)
    .orderBy('entry.seq')
    .execute();

export const listOpenClaims = (db: Reader): Promise<SignedClaim[]> =>
  selectClaims(db).where('claim_answer.entry_id', 'is', null).orderBy('entry.seq').execute();

export const insertClaim = async (tx: Writer, row: Insertable<ClaimTable>): Promise<void> => {
  await tx.insertInto('claim').values(row).execute();
};

export const insertClaimAnswer = async (tx: Writer, row: Insertable<ClaimAnswerTable>): Promise<void> => {
  await tx.insertInto('claim_answer').values(row).execute();
};
