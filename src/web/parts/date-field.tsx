import { useId } from 'react';
import { isDate, partWords, sayDateInFull } from '../../words/index.ts';
import styles from './form.module.css';
import { useFormField } from './form-context.ts';
import { sayHere } from './say-here.ts';

interface Props {
  readonly label: string;
  readonly where: string;
  /** YYYY-MM-DD, or '' where nothing is chosen. */
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly hint?: string;
  readonly isOptional?: boolean;
  readonly least?: string;
}

/** The device's own calendar: every phone has a good one. */
export function DateField({ label, where, value, onChange, hint, isOptional = false, least }: Props) {
  const ownId = useId();
  const { id = ownId, problem } = useFormField(where, value);
  // Each browser writes the figures of a day in its own order; the words are the same everywhere.
  const inWords = isDate(value) ? sayDateInFull(value) : undefined;
  const below = [inWords && `${ownId}-words`, hint && `${ownId}-hint`, problem && `${ownId}-wrong`]
    .filter(Boolean)
    .join(' ');
  return (
    <div className={styles.field}>
      <label className={styles.label} htmlFor={id}>
        {label} {isOptional && <span className={styles.may}>({partWords.optional})</span>}
      </label>
      <div className={styles.box}>
        <input
          id={id}
          className={styles.input}
          type="date"
          value={value}
          min={least}
          onChange={(event) => onChange(event.target.value)}
          aria-invalid={problem ? true : undefined}
          aria-describedby={below || undefined}
        />
      </div>
      {inWords && (
        <span id={`${ownId}-words`} className={styles.day}>
          {inWords}
        </span>
      )}
      {hint && (
        <span id={`${ownId}-hint`} className={styles.hint}>
          {hint}
        </span>
      )}
      {problem && (
        <span id={`${ownId}-wrong`} className={styles.wrong}>
          {sayHere(problem, label).says} {sayHere(problem, label).mend}
        </span>
      )}
    </div>
  );
}
