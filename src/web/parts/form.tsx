import type { ReactNode } from 'react';
import type { Problem } from '../../core/problem.ts';
import styles from './form.module.css';
import { FormContext } from './form-context.ts';
import { Problems } from './problems.tsx';
import { useJudgedForm } from './use-judged-form.ts';

interface Props {
  /** What the form is for, for those who jump from form to form. */
  readonly label: string;
  readonly problems: readonly Problem[];
  readonly onSubmit: () => void;
  readonly children: ReactNode;
  /** A part within the form says what is wrong, where it is in view. */
  readonly isSaidWithin?: boolean;
  /** What the line of a problem is about, where it goes by a name and not by its number. */
  readonly nameOf?: (problem: Problem) => string | undefined;
}

/** A form that shows what is wrong above its fields and beside each of them, until what is wrong is changed. */
export function Form({ label, problems, onSubmit, children, isSaidWithin = false, nameOf }: Props) {
  const parts = useJudgedForm(problems);
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
        {!isSaidWithin && <Problems problems={parts.standing} fieldIdOf={parts.fieldIdOf} nameOf={nameOf} />}
        {children}
      </FormContext>
    </form>
  );
}
