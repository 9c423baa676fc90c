import type { Reader } from './storage.ts';

/** What a workshop needs before its first batch, each kept in a table of its own. */
const TABLES = ['scale', 'material', 'lot', 'revision', 'report', 'product', 'customer_order'] as const;
export type FirstThing = (typeof TABLES)[number];

/** Which of these tables hold anything yet: one row is looked for, however long the table has grown. */
export async function findFilledTables(db: Reader): Promise<ReadonlySet<FirstThing>> {
  const filled = new Set<FirstThing>();
  for (const table of TABLES) {
    if (await db.selectFrom(table).select('id').limit(1).executeTakeFirst()) filled.add(table);
  }
  // Something to make and something to fill it into.
  if (!(await hasBothKinds(db))) filled.delete('material');
  return filled;
}

async function hasBothKinds(db: Reader): Promise<boolean> {
  const kinds = await db.selectFrom('material').select('kind').distinct().execute();
  return kinds.length > 1;
}
