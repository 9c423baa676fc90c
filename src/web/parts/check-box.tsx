import type { ReactNode } from 'react';
import styles from './form.module.css';

interface Props {
  readonly isChecked: boolean;
  readonly onChange: (isChecked: boolean) => void;
  readonly children: ReactNode;
}

export const CheckBox = ({ isChecked, onChange, children }: Props) => (
  <label className={styles.check}>
    <input type="checkbox" checked={isChecked} onChange={(event) => onChange(event.target.checked)} />
    <span>{children}</span>
  </label>
);
