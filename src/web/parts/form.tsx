import { type ReactNode, useId, useMemo } from 'react';
import type { Problem } from '../../core/problem.ts';
import styles from './form.module.css';
import { FormContext } from './form-context.ts';
import { Problems } from './problems.tsx';

interface Props {
  /** What the form is for, for those who jump from form to form. */
  readonly label: string;
  readonly problems: readonly Problem[];
  readonly onSubmit: () => void;
  readonly children: ReactNode;
}

/** A form that shows what is wrong above its fields and beside each of them. */
export function Form({ label, problems, onSubmit, children }: Props) {
  const formId = useId();
  const parts = useMemo(() => {
    const fieldIdOf = (where: string) => `${formId}-${where.replace(/[^A-Za-z0-9]+/g, '-')}`;
    return { fieldIdOf, problemOf: (where: string) => problems.find((found) => found.where === where) };
  }, [formId, problems]);
  return (
    <form
      className={styles.form}
      aria-label={label}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        // A dialog's form stands inside another form for React, though not on the page: its submit is not the outer one's.
        event.stopPropagation();
        onSubmit();
      }}
    >
      <FormContext value={parts}>
        <Problems problems={problems} fieldIdOf={parts.fieldIdOf} />
        {children}
      </FormContext>
    </form>
  );
}
