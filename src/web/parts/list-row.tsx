import type { ReactNode } from 'react';
import styles from './card.module.css';

/** Name on the left in heavy type, state or figure on the right. */
export const ListRow = ({ children }: { readonly children: ReactNode }) => (
  <div className={styles.row}>{children}</div>
);
