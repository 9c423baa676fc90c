import type { Selectable } from 'kysely';
import type { DecisionTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type DecisionRow = Selectable<DecisionTable>;

export interface SignedDecision extends DecisionRow {
  readonly person_name: string;
  readonly happened_at: string;
}

/** Every decision on a revision's unknowns, the earliest first: the latest on a key counts, both stay readable. */
export async function listDecisions(db: Reader, revisionId: string): Promise<SignedDecision[]> {
  const rows = await db
    .selectFrom('decision')
    .innerJoin('entry', 'entry.id', 'decision.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .selectAll('decision')
    .select(['person.name as person', 'entry.happened_at'])
    .where('decision.revision_id', '=', revisionId)
    .orderBy('entry.seq')
    .execute();
  return rows.map(({ person, ...row }) => ({ ...row, person_name: person ?? '' }));
}

export interface FormerDecision extends SignedDecision {
  readonly revision_number: number;
}

/** Every decision on the revisions of a formula that came before this one, the earliest first. */
export async function listFormerDecisions(
  db: Reader,
  formulaId: string,
  beforeNumber: number,
): Promise<FormerDecision[]> {
  const rows = await db
    .selectFrom('decision')
    .innerJoin('revision', 'revision.id', 'decision.revision_id')
    .innerJoin('entry', 'entry.id', 'decision.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .selectAll('decision')
    .select(['person.name as person', 'entry.happened_at', 'revision.number as revision_number'])
    .where('revision.formula_id', '=', formulaId)
    .where('revision.number', '<', beforeNumber)
    .orderBy('entry.seq')
    .execute();
  return rows.map(({ person, ...row }) => ({ ...row, person_name: person ?? '' }));
}

export async function insertDecision(db: Reader, row: DecisionRow): Promise<void> {
  await db.insertInto('decision').values(row).execute();
}
