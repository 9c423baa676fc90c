import type { ReactNode } from 'react';
import styles from './card.module.css';

/** Last line of a list's entry: a quiet word on the left, the means to act on the right. */
export const ListFoot = ({ children }: { readonly children: ReactNode }) => (
  <div className={styles.foot}>{children}</div>
);
