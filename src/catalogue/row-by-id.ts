/** A row that the code relies on: its absence is our own mistake. */
export function rowById<Row extends { readonly id: string }>(rows: readonly Row[], id: string): Row {
  const row = rows.find((each) => each.id === id);
  if (row === undefined) throw new Error(`the reference tables have no row ${id}`);
  return row;
}
