import type { ReactNode } from 'react';
import styles from './card.module.css';

interface Props<Row> {
  readonly rows: readonly Row[];
  readonly keyOf: (row: Row) => string;
  readonly children: (row: Row, index: number) => ReactNode;
  /** What stands there when there is nothing: say what would bring something. */
  readonly empty: ReactNode;
}

export const List = <Row,>({ rows, keyOf, children, empty }: Props<Row>) =>
  rows.length === 0 ? (
    <p className={styles.empty}>{empty}</p>
  ) : (
    <ul className={styles.list}>
      {rows.map((row, index) => (
        <li key={keyOf(row)}>{children(row, index)}</li>
      ))}
    </ul>
  );
