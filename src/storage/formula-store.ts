import type { Selectable } from 'kysely';
import type { FormulaTable } from './schema.ts';
import type { Reader } from './storage.ts';

export type FormulaRow = Selectable<FormulaTable>;

export const listFormulas = (db: Reader): Promise<FormulaRow[]> =>
  db.selectFrom('formula').selectAll().orderBy('kind').orderBy('name').execute();

export const findFormula = (db: Reader, id: string): Promise<FormulaRow | undefined> =>
  db.selectFrom('formula').selectAll().where('id', '=', id).executeTakeFirst();

export async function insertFormula(db: Reader, row: FormulaRow): Promise<void> {
  await db.insertInto('formula').values(row).execute();
}

export async function updateFormula(db: Reader, row: FormulaRow, seenVersion: number): Promise<boolean> {
  const changed = await db
    .updateTable('formula')
    .set({ name: row.name, code: row.code, kind: row.kind, version: seenVersion + 1 })
    .where('id', '=', row.id)
    .where('version', '=', seenVersion)
    .returningAll()
    .executeTakeFirst();
  return changed !== undefined;
}
