import type { CreateTableBuilder, Kysely } from 'kysely';
import { AT_COMMIT, STRICT } from '../sqlite-only.ts';

export type Column = `${'text' | 'integer' | 'blob'}${'' | '?'}` | `-> ${string}` | `->? ${string}`;

/** `text` must be there, `text?` may be null, `-> lot.id` names a row of another table. */
export async function makeTable(
  database: Kysely<never>,
  name: string,
  key: readonly string[],
  columns: Readonly<Record<string, Column>>,
): Promise<void> {
  let table = database.schema.createTable(name) as CreateTableBuilder<string, string>;
  for (const [column, kind] of Object.entries(columns)) table = addColumn(table, column, kind);
  await table
    .addPrimaryKeyConstraint(`${name}_key`, key as string[])
    .modifyEnd(STRICT)
    .execute();
}

function addColumn(table: CreateTableBuilder<string, string>, column: string, kind: Column) {
  const isOptional = kind.includes('?');
  if (kind.startsWith('->')) {
    const named = kind.replace(/^->\??\s*/, '');
    return table.addColumn(column, 'text', (built) => {
      const referring = built.references(named);
      const placed = isOptional ? referring : referring.notNull();
      // An entry is written after the records that name it, since it holds their hashes.
      return named === 'entry.id' ? placed.modifyEnd(AT_COMMIT) : placed;
    });
  }
  const type = kind.replace('?', '') as 'text' | 'integer' | 'blob';
  return table.addColumn(column, type, (built) => (isOptional ? built : built.notNull()));
}
