import { done, type Result, refused } from '../core/problem.ts';
import type { SqliteHandle } from './sqlite-only.ts';
import { listTables, setAtCommit } from './sqlite-only.ts';
import { openProblem, type Storage } from './storage.ts';

/**
 * Puts everything that stands in one storage into another that is empty, in one transaction: afterwards it is all there,
 * or nothing. Answers false, and changes nothing, where something stands there already.
 */
export async function fillFrom(from: Storage, into: Storage): Promise<Result<boolean>> {
  try {
    return done(await into.db.connection().execute(async () => copyAll(from.handle, into.handle)));
  } catch (error) {
    const known = openProblem(error, into.file);
    if (known) return refused(known);
    throw error;
  }
}

const copyAll = (from: SqliteHandle, into: SqliteHandle): boolean =>
  into
    .transaction(() => {
      const { entries } = into.prepare('select count(*) as entries from entry').get() as { entries: number };
      if (entries > 0) return false;
      setAtCommit(into);
      // The end of the chain moves by itself with each entry.
      for (const table of listTables(from).filter((name) => name !== 'chain_end'))
        copyTable(table, from, into);
      return true;
    })
    .immediate();

/** In the order in which the rows were written: no balance is ever below nought on the way. */
function copyTable(table: string, from: SqliteHandle, into: SqliteHandle): void {
  const rows = from.prepare(`select * from "${table}" order by rowid`).all() as Record<string, unknown>[];
  const [first] = rows;
  if (!first) return;
  const columns = Object.keys(first);
  const insert = into.prepare(
    `insert into "${table}" (${columns.map((column) => `"${column}"`).join(', ')})
     values (${columns.map(() => '?').join(', ')})`,
  );
  for (const row of rows) insert.run(columns.map((column) => row[column]));
}
