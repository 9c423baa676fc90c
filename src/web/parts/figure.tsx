import type { ReactNode } from 'react';
import { showFigure } from '../show/show-figure.ts';
import styles from './figure.module.css';

interface Props {
  readonly label: ReactNode;
  readonly value: ReactNode;
  readonly unit?: string | undefined;
  /** Below, quietly: where it comes from, how sure it is. */
  readonly hint?: ReactNode;
  /** To be read from two metres. */
  readonly isLarge?: boolean;
}

export const Figure = ({ label, value, unit, hint, isLarge = false }: Props) => (
  <div className={styles.figure}>
    <dt className="soft">{label}</dt>
    <dd className={isLarge ? `${styles.value} ${styles.large}` : styles.value}>
      {showFigure(value)}
      {unit && <span className={styles.unit}>{unit}</span>}
    </dd>
    {hint && <dd className="soft small">{hint}</dd>}
  </div>
);
