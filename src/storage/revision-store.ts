import type { Selectable } from 'kysely';
import type { RevisionLineTable, RevisionStepTable, RevisionTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type RevisionRow = Selectable<RevisionTable>;
export type RevisionLineRow = Selectable<RevisionLineTable>;
export type RevisionStepRow = Selectable<RevisionStepTable>;

/** A revision, and whether a batch used it: then it is never edited again. */
export interface RevisionHead extends RevisionRow {
  readonly is_fixed: boolean;
}

const selectHeads = (db: Reader) =>
  db
    .selectFrom('revision')
    .selectAll('revision')
    .select((query) =>
      query
        .exists(
          query.selectFrom('batch').select('batch.id').whereRef('batch.revision_id', '=', 'revision.id'),
        )
        .as('is_fixed'),
    );

type Selected = Awaited<ReturnType<ReturnType<typeof selectHeads>['execute']>>[number];
const headOf = (row: Selected): RevisionHead => ({ ...row, is_fixed: Boolean(row.is_fixed) });

export async function findRevision(db: Reader, id: string): Promise<RevisionHead | undefined> {
  const row = await selectHeads(db).where('revision.id', '=', id).executeTakeFirst();
  return row && headOf(row);
}

/** Revisions of every formula, or of one, the oldest first. */
export async function listRevisions(db: Reader, formulaId?: string): Promise<RevisionHead[]> {
  const query = selectHeads(db).orderBy('revision.formula_id').orderBy('revision.number');
  const rows = await (formulaId === undefined
    ? query
    : query.where('revision.formula_id', '=', formulaId)
  ).execute();
  return rows.map(headOf);
}

/** The newest revision of every formula, in one query. */
export async function listLatestRevisions(db: Reader): Promise<RevisionHead[]> {
  const newest = new Map((await listRevisions(db)).map((row) => [row.formula_id, row]));
  return [...newest.values()];
}

export interface NamedRevisionLine extends RevisionLineRow {
  readonly item_name: string;
}

export async function listRevisionLines(
  db: Reader,
  revisionIds: readonly string[],
): Promise<NamedRevisionLine[]> {
  const rows = await db
    .selectFrom('revision_line')
    .leftJoin('material', 'material.id', 'revision_line.item_id')
    .leftJoin('formula', 'formula.id', 'revision_line.item_id')
    .selectAll('revision_line')
    .select(['material.name as material_name', 'formula.name as formula_name'])
    .where('revision_line.revision_id', 'in', revisionIds)
    .orderBy('revision_line.revision_id')
    .orderBy('revision_line.position')
    .execute();
  return rows.map(({ material_name, formula_name, ...row }) => ({
    ...row,
    item_name: material_name ?? formula_name ?? '',
  }));
}

export const listRevisionSteps = (db: Reader, revisionIds: readonly string[]): Promise<RevisionStepRow[]> =>
  db
    .selectFrom('revision_step')
    .selectAll()
    .where('revision_id', 'in', revisionIds)
    .orderBy('revision_id')
    .orderBy('position')
    .execute();

export interface RevisionParts {
  readonly lines: readonly RevisionLineRow[];
  readonly steps: readonly RevisionStepRow[];
}

export async function insertRevision(db: Reader, row: RevisionRow, parts: RevisionParts): Promise<void> {
  await db.insertInto('revision').values(row).execute();
  await insertParts(db, parts);
}

/** Writes a draft anew where it still has the version that the writer saw; the database refuses it for a used one. */
export async function replaceRevision(
  db: Reader,
  row: RevisionRow,
  parts: RevisionParts,
  seenVersion: number,
): Promise<boolean> {
  const changed = await db
    .updateTable('revision')
    .set({ details: row.details, version: seenVersion + 1 })
    .where('id', '=', row.id)
    .where('version', '=', seenVersion)
    .returningAll()
    .executeTakeFirst();
  if (!changed) return false;
  await db.deleteFrom('revision_line').where('revision_id', '=', row.id).returningAll().execute();
  await db.deleteFrom('revision_step').where('revision_id', '=', row.id).returningAll().execute();
  await insertParts(db, parts);
  return true;
}

async function insertParts(db: Reader, { lines, steps }: RevisionParts): Promise<void> {
  if (lines.length > 0)
    await db
      .insertInto('revision_line')
      .values([...lines])
      .execute();
  if (steps.length > 0)
    await db
      .insertInto('revision_step')
      .values([...steps])
      .execute();
}
