import type { ReactNode } from 'react';
import { showFigure } from '../show/show-figure.ts';
import styles from './table.module.css';

export interface Column<Row> {
  readonly head: string;
  readonly cell: (row: Row) => ReactNode;
  readonly isNumber?: boolean;
  /** A number of a lot or a batch is not torn over two lines. */
  readonly isCode?: boolean;
}

interface Props<Row> {
  readonly caption: string;
  readonly isCaptionHidden?: boolean;
  /** The first column names the row. */
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly keyOf: (row: Row) => string;
}

/** A table that turns into a list of cards on a phone. */
export const Table = <Row,>({ caption, isCaptionHidden = false, columns, rows, keyOf }: Props<Row>) => (
  <table className={styles.table}>
    <caption className={isCaptionHidden ? 'visually-hidden' : undefined}>{caption}</caption>
    <thead>
      <tr>
        {columns.map(({ head, isNumber }) => (
          <th key={head} scope="col" className={isNumber ? styles.number : undefined}>
            {head}
          </th>
        ))}
      </tr>
    </thead>
    <tbody>
      {rows.map((row) => (
        <tr key={keyOf(row)}>
          {columns.map((column, index) => (
            <TableCell key={column.head} column={column} row={row} isFirst={index === 0} />
          ))}
        </tr>
      ))}
    </tbody>
  </table>
);

interface CellProps<Row> {
  readonly column: Column<Row>;
  readonly row: Row;
  readonly isFirst: boolean;
}

function TableCell<Row>({ column, row, isFirst }: CellProps<Row>) {
  const className = column.isNumber ? styles.number : column.isCode ? styles.code : undefined;
  const inside = (
    <>
      <span className={styles.head} aria-hidden="true">
        {column.head}
      </span>
      <span>{column.isNumber ? showFigure(column.cell(row)) : column.cell(row)}</span>
    </>
  );
  return isFirst ? (
    <th scope="row" className={className}>
      {inside}
    </th>
  ) : (
    <td className={className}>{inside}</td>
  );
}
