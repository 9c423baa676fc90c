import type { ReactNode } from 'react';
import styles from './figure.module.css';

/** Figures side by side with a thin rule between them. */
export const Figures = ({ children }: { readonly children: ReactNode }) => (
  <dl className={styles.row}>{children}</dl>
);
