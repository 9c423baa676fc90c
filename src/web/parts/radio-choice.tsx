import { useId } from 'react';
import { FieldGroup } from './field-group.tsx';
import styles from './form.module.css';
import type { Choice } from './select.tsx';

interface Props {
  readonly title: string;
  readonly choices: readonly Choice[];
  readonly value: string;
  readonly onChange: (id: string) => void;
  /** One below the other, 64 px each. */
  readonly isBench?: boolean;
}

/** One of a few, all in sight. */
export function RadioChoice({ title, choices, value, onChange, isBench = false }: Props) {
  const group = useId();
  return (
    <FieldGroup title={title}>
      <div className={isBench ? styles.benchChoices : styles.choices}>
        {choices.map(({ id, name }) => (
          <label key={id} className={styles.check}>
            <input type="radio" name={group} checked={id === value} onChange={() => onChange(id)} />
            <span>{name}</span>
          </label>
        ))}
      </div>
    </FieldGroup>
  );
}
