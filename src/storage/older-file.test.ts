import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Kysely } from 'kysely';
import { describe, expect, it } from 'vitest';
import { done, must } from '../core/problem.ts';
import { checkUp } from './check-up.ts';
import * as foundation from './migrations/0001-foundation.ts';
import { migrations } from './migrations/index.ts';
import type { Database } from './schema.ts';
import {
  ImmediateDialect,
  openSqlite,
  readSchemaVersion,
  setGuards,
  writeSchemaVersion,
} from './sqlite-only.ts';
import { openStorage } from './storage.ts';
import { writeOnce } from './write.ts';

const AT = '2026-11-26T08:00:00.000Z';

/** A file as the first version of the program left it, with one entry in it. */
async function makeFirstFile(file: string): Promise<void> {
  const handle = openSqlite(file);
  setGuards(handle);
  const db = new Kysely<Database>({ dialect: new ImmediateDialect(handle) });
  await db.transaction().execute(async (tx) => {
    await foundation.up(tx as unknown as Kysely<never>);
    await writeSchemaVersion(tx as unknown as Kysely<never>, 1);
  });
  await db.destroy();
}

describe('a file of an older version', () => {
  it('is brought up to date after a copy was asked for, keeps its entries and is sound', async () => {
    const file = join(mkdtempSync(join(tmpdir(), 'gramwright-older-')), 'older.gramwright');
    await makeFirstFile(file);
    const asked: number[] = [];
    const storage = must(
      await openStorage(file, {
        beforeMigration: (_handle, version) => {
          asked.push(version);
          return done(undefined);
        },
      }),
    );
    expect(asked).toEqual([1]);
    expect(readSchemaVersion(storage.handle)).toBe(migrations.length);
    const written = await writeOnce(
      storage,
      { id: 'e1', at: AT, by: null, device: 'test', asked: { text: 'x', salt: null } },
      AT,
      async (_tx, tell) => tell({ kind: 'tried', subjectKind: 'test', subjectId: 's', payload: {} }),
    );
    expect(written.ok).toBe(true);
    expect((await checkUp(storage)).filter((each) => each.wrong.length > 0)).toEqual([]);
    await storage.close();
  });
});
