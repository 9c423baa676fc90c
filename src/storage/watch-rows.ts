import {
  ColumnNode,
  DeleteQueryNode,
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
import { isWatched, type RowStory } from './record-rows.ts';

/** A write whose rows are known only once the database gives them back. */
interface Change {
  readonly table: string;
  readonly how: 'add' | 'remove';
}

/**
 * Tells a story of every row that goes through a transaction, wherever it is written: no store can forget it, and no
 * query is added for it. A row that is changed is told as it is afterwards, one that is deleted as taken away.
 */
export function watchRows(story: RowStory): KyselyPlugin {
  const changes = new WeakMap<QueryId, Change>();
  return {
    transformQuery({ node, queryId }) {
      const change = changeOf(node);
      if (change !== undefined) changes.set(queryId, change);
      else if (InsertQueryNode.is(node)) tellInsert(node, story);
      return node;
    },
    async transformResult({ result, queryId }) {
      const change = changes.get(queryId);
      if (change !== undefined) for (const row of result.rows) story[change.how](change.table, row);
      return result;
    },
  };
}

function changeOf(node: OperationNode): Change | undefined {
  if (UpdateQueryNode.is(node)) return toldByRows(node.table, node.returning, 'add');
  if (DeleteQueryNode.is(node)) return toldByRows(node.from.froms[0], node.returning, 'remove');
  // What it found there already stands in the row, not in the values.
  if (InsertQueryNode.is(node) && node.onConflict) return toldByRows(node.into, node.returning, 'add');
  return undefined;
}

function toldByRows(
  table: OperationNode | undefined,
  returning: OperationNode | undefined,
  how: Change['how'],
): Change | undefined {
  const name = table !== undefined && TableNode.is(table) ? table.table.identifier.name : '';
  if (!isWatched(name)) return undefined;
  if (!returning) throw new Error(`a change of ${name} gives the whole row back, so that it can be told`);
  return { table: name, how };
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
