import {
  ColumnNode,
  InsertQueryNode,
  type KyselyPlugin,
  type OperationNode,
  PrimitiveValueListNode,
  type RootOperationNode,
  ValueListNode,
  ValueNode,
  ValuesNode,
} from 'kysely';
import type { RowStory } from './record-rows.ts';

/**
 * Tells a story of every record that goes through a transaction, wherever it is written: no store can forget it, and no
 * query is added for it.
 */
export const watchRows = (story: RowStory): KyselyPlugin => ({
  transformQuery({ node }) {
    if (InsertQueryNode.is(node)) tellInsert(node, story);
    return node as RootOperationNode;
  },
  transformResult: async ({ result }) => result,
});

function tellInsert(node: InsertQueryNode, story: RowStory): void {
  const table = node.into?.table.identifier.name;
  if (table === undefined || node.values === undefined || !ValuesNode.is(node.values)) return;
  const columns = (node.columns ?? []).map((column) => (ColumnNode.is(column) ? column.column.name : ''));
  for (const row of node.values.values) {
    const values = valuesOf(row);
    story.add(table, Object.fromEntries(columns.map((column, place) => [column, values[place]])));
  }
}

/** What is left out of a row is the database's null. */
const valuesOf = (row: OperationNode): readonly unknown[] => {
  if (PrimitiveValueListNode.is(row)) return row.values;
  if (!ValueListNode.is(row)) throw new Error('a record is written value by value');
  return row.values.map((value) => (ValueNode.is(value) ? value.value : null));
};
