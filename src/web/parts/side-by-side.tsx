import type { ReactNode } from 'react';
import styles from './form.module.css';

/** Fields beside each other where there is room. */
export const SideBySide = ({ children }: { readonly children: ReactNode }) => (
  <div className={styles.pair}>{children}</div>
);
