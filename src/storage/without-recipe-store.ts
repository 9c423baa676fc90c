import type { Selectable } from 'kysely';
import type { BatchLineRow } from './batch-store.ts';
import type { RevisionLineRow, RevisionStepRow } from './revision-store.ts';
import type { WithoutRecipeTable } from './schema-weighing.ts';
import type { Reader } from './storage.ts';

export type WithoutRecipeRow = Selectable<WithoutRecipeTable>;

export const findWithoutRecipe = (db: Reader, batchId: string): Promise<WithoutRecipeRow | undefined> =>
  db.selectFrom('without_recipe').selectAll().where('batch_id', '=', batchId).executeTakeFirst();

export async function insertWithoutRecipe(db: Reader, row: WithoutRecipeRow): Promise<void> {
  await db.insertInto('without_recipe').values(row).execute();
}

/** One more line of a batch that is weighed without a recipe. */
export async function insertBatchLine(db: Reader, row: BatchLineRow): Promise<void> {
  await db.insertInto('batch_line').values(row).execute();
}

/** One more line of the revision that is being written from it; the database refuses it for any other that was used. */
export async function insertRevisionLine(db: Reader, row: RevisionLineRow): Promise<void> {
  await db.insertInto('revision_line').values(row).execute();
}

export async function insertRevisionStep(db: Reader, row: RevisionStepRow): Promise<void> {
  await db.insertInto('revision_step').values(row).execute();
}
