import type { Kysely } from 'kysely';
import { makeTable } from '../make-table.ts';

export const RECORDS = [] as const;

/** Devices of the workshop that reach its computer over the network, and the secrets of people. */
export async function up(db: Kysely<never>): Promise<void> {
  await makeTable(db, 'device', ['id'], {
    id: 'text',
    name: 'text',
    token_hash: 'text',
    paired_at: 'text',
    is_dropped: 'integer',
    version: 'integer',
  });
  await makeTable(db, 'device_seen', ['device_id'], { device_id: '-> device.id', at: 'text' });
  await makeTable(db, 'person_pin', ['person_id'], {
    person_id: '-> person.id',
    salt: 'text',
    hash: 'text',
    key_name: 'text',
    version: 'integer',
  });
  await makeTable(db, 'unlocked', ['device_id', 'person_id'], {
    device_id: '-> device.id',
    person_id: '-> person.id',
    at: 'text',
  });
  await makeTable(db, 'pin_try', ['device_id', 'person_id'], {
    device_id: '-> device.id',
    person_id: '-> person.id',
    wrong: 'integer',
    last_at: 'text',
  });
  await db.schema.createIndex('device_by_token_hash').unique().on('device').column('token_hash').execute();
}
