import { normaliseName } from './read-name.ts';

/** How rows of one table are recognised: by name, else by CAS, unless plant part or process speak against it. */
export interface Recognised<Row> {
  readonly row: Row;
  readonly names: readonly string[];
  readonly cas: readonly string[];
  readonly plantPart?: readonly string[] | undefined;
  readonly process?: readonly string[] | undefined;
  readonly origin?: 'natural' | 'added' | undefined;
}

export interface RowIndex<Row> {
  /** Only where other tables point at these rows by id, as they do at the allergen entries. */
  readonly byEntryId?: ReadonlyMap<string, Row>;
  readonly byName: ReadonlyMap<string, readonly Recognised<Row>[]>;
  readonly byCas: ReadonlyMap<string, readonly Recognised<Row>[]>;
}

function push<Value>(map: Map<string, Value[]>, key: string, value: Value): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else if (!list.includes(value)) list.push(value);
}

export function indexRows<Row>(
  rows: readonly Recognised<Row>[],
  byEntryId?: ReadonlyMap<string, Row>,
): RowIndex<Row> {
  const byName = new Map<string, Recognised<Row>[]>();
  const byCas = new Map<string, Recognised<Row>[]>();
  for (const recognised of rows) {
    for (const name of recognised.names) push(byName, normaliseName(name), recognised);
    for (const cas of recognised.cas) push(byCas, cas, recognised);
  }
  return { byName, byCas, ...(byEntryId !== undefined && { byEntryId }) };
}
