import { CheckBox } from './check-box.tsx';
import { FieldGroup } from './field-group.tsx';
import styles from './form.module.css';
import type { Choice } from './select.tsx';

interface Props {
  readonly title: string;
  readonly choices: readonly Choice[];
  readonly chosen: readonly string[];
  readonly onChange: (chosen: string[]) => void;
}

/** Several of a few. */
export const CheckBoxes = ({ title, choices, chosen, onChange }: Props) => (
  <FieldGroup title={title}>
    <div className={styles.choices}>
      {choices.map(({ id, name }) => (
        <CheckBox
          key={id}
          isChecked={chosen.includes(id)}
          onChange={(isChecked) => onChange(isChecked ? [...chosen, id] : chosen.filter((one) => one !== id))}
        >
          {name}
        </CheckBox>
      ))}
    </div>
  </FieldGroup>
);
