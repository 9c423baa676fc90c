import {
  ColumnNode,
  InsertQueryNode,
  type KyselyPlugin,
  type OperationNode,
  PrimitiveValueListNode,
  type QueryId,
  TableNode,
  UpdateQueryNode,
  ValueListNode,
  ValueNode,
  ValuesNode,
} from 'kysely';
import { RECORD_KEYS, type RowStory } from './record-rows.ts';

/**
 * Tells a story of every record that goes through a transaction, wherever it is written: no store can forget it, and no
 * query is added for it. A row that is changed is told as it is afterwards.
 */
export function watchRows(story: RowStory): KyselyPlugin {
  const changes = new WeakMap<QueryId, string>();
  return {
    transformQuery({ node, queryId }) {
      if (InsertQueryNode.is(node)) tellInsert(node, story);
      const changed = UpdateQueryNode.is(node) ? changedRecord(node) : undefined;
      if (changed !== undefined) changes.set(queryId, changed);
      return node;
    },
    async transformResult({ result, queryId }) {
      const changed = changes.get(queryId);
      if (changed !== undefined) for (const row of result.rows) story.add(changed, row);
      return result;
    },
  };
}

function changedRecord({ table, returning }: UpdateQueryNode): string | undefined {
  const name = table !== undefined && TableNode.is(table) ? table.table.identifier.name : '';
  if (!(name in RECORD_KEYS)) return undefined;
  if (!returning) throw new Error(`a change of ${name} gives the whole row back, so that it can be told`);
  return name;
}

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
