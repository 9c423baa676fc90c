import type { Selectable } from 'kysely';
import type { DeviceTable, UnlockedTable } from './schema-reach.ts';
import type { Reader } from './storage.ts';

export type DeviceRow = Selectable<DeviceTable>;
export type UnlockedRow = Selectable<UnlockedTable>;
export type SeenDevice = DeviceRow & { readonly last_seen: string | null };

export const findDevice = (db: Reader, id: string): Promise<DeviceRow | undefined> =>
  db.selectFrom('device').selectAll().where('id', '=', id).executeTakeFirst();

/** The device that shows this secret, unless it was dropped. */
export const findDeviceByToken = (db: Reader, tokenHash: string): Promise<DeviceRow | undefined> =>
  db
    .selectFrom('device')
    .selectAll()
    .where('token_hash', '=', tokenHash)
    .where('is_dropped', '=', 0)
    .executeTakeFirst();

/** All but those that were dropped, the newest first. */
export const listDevices = (db: Reader): Promise<SeenDevice[]> =>
  db
    .selectFrom('device')
    .leftJoin('device_seen', 'device_seen.device_id', 'device.id')
    .selectAll('device')
    .select('device_seen.at as last_seen')
    .where('is_dropped', '=', 0)
    .orderBy('paired_at', 'desc')
    .orderBy('id', 'desc')
    .execute();

export async function insertDevice(db: Reader, row: DeviceRow): Promise<void> {
  await db.insertInto('device').values(row).execute();
}

export async function updateDevice(
  db: Reader,
  row: Pick<DeviceRow, 'id' | 'name' | 'is_dropped'>,
  seenVersion: number,
): Promise<boolean> {
  const changed = await db
    .updateTable('device')
    .set({ name: row.name, is_dropped: row.is_dropped, version: seenVersion + 1 })
    .where('id', '=', row.id)
    .where('version', '=', seenVersion)
    .where('is_dropped', '=', 0)
    .returningAll()
    .executeTakeFirst();
  return changed !== undefined;
}

export async function noteSeen(db: Reader, deviceId: string, at: string): Promise<void> {
  await db
    .insertInto('device_seen')
    .values({ device_id: deviceId, at })
    .onConflict((seen) => seen.column('device_id').doUpdateSet({ at }))
    .execute();
}

export const listUnlocked = (db: Reader, deviceId?: string): Promise<UnlockedRow[]> =>
  db
    .selectFrom('unlocked')
    .selectAll()
    .$if(deviceId !== undefined, (query) => query.where('device_id', '=', deviceId ?? ''))
    .orderBy('at')
    .execute();

export const isUnlockedOn = async (db: Reader, deviceId: string, personId: string): Promise<boolean> =>
  (await db
    .selectFrom('unlocked')
    .select('at')
    .where('device_id', '=', deviceId)
    .where('person_id', '=', personId)
    .executeTakeFirst()) !== undefined;

export async function insertUnlocked(db: Reader, row: UnlockedRow): Promise<void> {
  await db
    .insertInto('unlocked')
    .values(row)
    .onConflict((known) => known.columns(['device_id', 'person_id']).doUpdateSet({ at: row.at }))
    .returningAll()
    .execute();
}

/** Locks a person on one device, or on all of them. */
export async function deleteUnlocked(
  db: Reader,
  which: { readonly deviceId?: string; readonly personId?: string },
): Promise<void> {
  const { deviceId, personId } = which;
  if (deviceId === undefined && personId === undefined) throw new Error('whom to lock was not said');
  await db
    .deleteFrom('unlocked')
    .$if(deviceId !== undefined, (query) => query.where('device_id', '=', deviceId ?? ''))
    .$if(personId !== undefined, (query) => query.where('person_id', '=', personId ?? ''))
    .returningAll()
    .execute();
}
