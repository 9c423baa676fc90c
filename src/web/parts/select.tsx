import { useId } from 'react';
import { partWords } from '../../words/index.ts';
import styles from './form.module.css';
import { useFormField } from './form-context.ts';
import { sayHere } from './say-here.ts';

export interface Choice {
  readonly id: string;
  readonly name: string;
}

interface Props {
  readonly label: string;
  readonly where: string;
  /** '' where nothing is chosen. */
  readonly value: string;
  readonly onChange: (id: string) => void;
  readonly choices: readonly Choice[];
  /** The words of the empty choice; without them something is always chosen. */
  readonly none?: string;
  readonly hint?: string | undefined;
  readonly isBench?: boolean;
}

/** A short list to choose from: the device's own, which every hand knows. For long lists take ComboBox. */
export function Select({ label, where, value, onChange, choices, none, hint, isBench = false }: Props) {
  const ownId = useId();
  const { id = ownId, problem } = useFormField(where, value);
  const below = [hint && `${ownId}-hint`, problem && `${ownId}-wrong`].filter(Boolean).join(' ');
  return (
    <div className={styles.field}>
      <label className={styles.label} htmlFor={id}>
        {label}
      </label>
      <div className={styles.box}>
        <select
          id={id}
          className={isBench ? `${styles.input} ${styles.bench}` : styles.input}
          value={value}
          onChange={(event) => onChange(event.target.value)}
          aria-invalid={problem ? true : undefined}
          aria-describedby={below || undefined}
        >
          {(none !== undefined || value === '') && <option value="">{none ?? partWords.choose}</option>}
          {choices.map((choice) => (
            <option key={choice.id} value={choice.id}>
              {choice.name}
            </option>
          ))}
        </select>
      </div>
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
