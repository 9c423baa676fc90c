import type { Selectable } from 'kysely';
import type { ScaleCheckTable, ScaleTestTable } from './schema-scales.ts';
import type { Reader } from './storage.ts';

export type ScaleTestRow = Selectable<ScaleTestTable>;
export type ScaleCheckRow = Selectable<ScaleCheckTable>;

/** Who did it, and when. */
interface Signed {
  readonly happened_at: string;
  readonly person_name: string | null;
}

export async function insertScaleTest(db: Reader, row: ScaleTestRow): Promise<void> {
  await db.insertInto('scale_test').values(row).execute();
}

export async function insertScaleCheck(db: Reader, row: ScaleCheckRow): Promise<void> {
  await db.insertInto('scale_check').values(row).execute();
}

/** Every test of a scale, the latest first. */
export const listScaleTests = (db: Reader, scaleId: string): Promise<(ScaleTestRow & Signed)[]> =>
  db
    .selectFrom('scale_test')
    .innerJoin('entry', 'entry.id', 'scale_test.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .selectAll('scale_test')
    .select(['entry.happened_at', 'person.name as person_name'])
    .where('scale_test.scale_id', '=', scaleId)
    .orderBy('entry.happened_at', 'desc')
    .orderBy('entry.seq', 'desc')
    .execute();

/** The latest checks of a scale, the latest first. */
export const listScaleChecks = (
  db: Reader,
  scaleId: string,
  most: number,
): Promise<(ScaleCheckRow & Signed)[]> =>
  db
    .selectFrom('scale_check')
    .innerJoin('entry', 'entry.id', 'scale_check.entry_id')
    .leftJoin('person', 'person.id', 'entry.person_id')
    .selectAll('scale_check')
    .select(['entry.happened_at', 'person.name as person_name'])
    .where('scale_check.scale_id', '=', scaleId)
    .orderBy('entry.happened_at', 'desc')
    .orderBy('entry.seq', 'desc')
    .limit(most)
    .execute();

/** The check that said whether a scale might weigh at an instant; undefined: there was none before it. */
export const findScaleCheckAt = (
  db: Reader,
  scaleId: string,
  at: string,
): Promise<ScaleCheckRow | undefined> =>
  db
    .selectFrom('scale_check')
    .innerJoin('entry', 'entry.id', 'scale_check.entry_id')
    .selectAll('scale_check')
    .where('scale_check.scale_id', '=', scaleId)
    .where('entry.happened_at', '<=', at)
    .where((query) =>
      query.or([query('scale_check.is_good', '=', 0), query('scale_check.is_own_weight', '=', 1)]),
    )
    .orderBy('entry.happened_at', 'desc')
    .orderBy('entry.seq', 'desc')
    .limit(1)
    .executeTakeFirst();

/** What was last weighed in on a scale, in micrograms: near which masses it is used. */
export async function listWeighedOn(db: Reader, scaleId: string, most: number): Promise<number[]> {
  const rows = await db
    .selectFrom('addition')
    .innerJoin('entry', 'entry.id', 'addition.entry_id')
    .select('addition.actual_ug')
    .where('addition.scale_id', '=', scaleId)
    .orderBy('entry.seq', 'desc')
    .limit(most)
    .execute();
  return rows.map((row) => row.actual_ug);
}
