import type { Selectable } from 'kysely';
import { done, type Problem, type Result, refused } from '../core/problem.ts';
import type { PersonPinTable, PinTryTable } from './schema-reach.ts';
import type { Reader } from './storage.ts';

export type PersonPinRow = Selectable<PersonPinTable>;
export type PinTryRow = Selectable<PinTryTable>;

export const findPin = (db: Reader, personId: string): Promise<PersonPinRow | undefined> =>
  db.selectFrom('person_pin').selectAll().where('person_id', '=', personId).executeTakeFirst();

/** Who has a PIN that can still be checked with this key. */
export async function listPinHolders(db: Reader, keyName: string): Promise<string[]> {
  const rows = await db
    .selectFrom('person_pin')
    .select('person_id')
    .where('key_name', '=', keyName)
    .execute();
  return rows.map((row) => row.person_id);
}

export async function keepPin(db: Reader, row: Omit<PersonPinRow, 'version'>): Promise<void> {
  const { person_id: _, ...secret } = row;
  await db
    .insertInto('person_pin')
    .values({ ...row, version: 1 })
    .onConflict((known) =>
      known
        .column('person_id')
        .doUpdateSet((update) => ({ ...secret, version: update('person_pin.version', '+', 1) })),
    )
    .returningAll()
    .execute();
}

export async function deletePin(db: Reader, personId: string): Promise<void> {
  await db.deleteFrom('person_pin').where('person_id', '=', personId).returningAll().execute();
}

export interface PinTry {
  readonly deviceId: string;
  readonly personId: string;
  readonly now: string;
}

/**
 * Counts a try as wrong, unless it may not be made now: in one transaction of its own, so that many at once are many.
 * Answers the count with this one in it.
 */
export const countPinTry = (
  db: Reader,
  { deviceId, personId, now }: PinTry,
  whyNot: (before: PinTryRow) => Problem | undefined,
): Promise<Result<PinTryRow>> =>
  db.transaction().execute(async (tx) => {
    const none = { device_id: deviceId, person_id: personId, wrong: 0, last_at: now };
    const before = (await findPinTries(tx, deviceId, personId)) ?? none;
    const hindrance = whyNot(before);
    if (hindrance) return refused(hindrance);
    const after = { ...before, wrong: before.wrong + 1, last_at: now };
    await keepPinTries(tx, after);
    return done(after);
  });

const findPinTries = (db: Reader, deviceId: string, personId: string): Promise<PinTryRow | undefined> =>
  db
    .selectFrom('pin_try')
    .selectAll()
    .where('device_id', '=', deviceId)
    .where('person_id', '=', personId)
    .executeTakeFirst();

async function keepPinTries(db: Reader, row: PinTryRow): Promise<void> {
  const { wrong, last_at } = row;
  await db
    .insertInto('pin_try')
    .values(row)
    .onConflict((known) => known.columns(['device_id', 'person_id']).doUpdateSet({ wrong, last_at }))
    .execute();
}

/** After the right PIN on one device, or a new PIN for all of them. */
export async function forgetPinTries(
  db: Reader,
  { personId, deviceId }: { readonly personId: string; readonly deviceId?: string },
): Promise<void> {
  await db
    .deleteFrom('pin_try')
    .where('person_id', '=', personId)
    .$if(deviceId !== undefined, (query) => query.where('device_id', '=', deviceId ?? ''))
    .execute();
}
