import type { ReactNode } from 'react';
import styles from './form.module.css';

interface Props {
  readonly title: string;
  readonly children: ReactNode;
}

export const FieldGroup = ({ title, children }: Props) => (
  <fieldset className={styles.group}>
    <legend>{title}</legend>
    {children}
  </fieldset>
);
