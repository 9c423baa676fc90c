import type { ReactNode } from 'react';
import styles from './form.module.css';

export const FormActions = ({ children }: { readonly children: ReactNode }) => (
  <div className={styles.actions}>{children}</div>
);
