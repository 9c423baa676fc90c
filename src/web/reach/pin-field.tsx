import { Input, Label, TextField } from 'react-aria-components';
import form from '../parts/form.module.css';
import { useFormField } from '../parts/form-context.ts';
import { sayHere } from '../parts/say-here.ts';
import styles from './reach.module.css';

interface Props {
  readonly label: string;
  readonly where: string;
  readonly value: string;
  readonly onChange: (pin: string) => void;
  readonly isFirst?: boolean;
  /** Keys stand below it: a tablet need not show its own. */
  readonly hasPad?: boolean;
}

/** The longest that a PIN may be. */
export const MOST_DIGITS = 8;

/** Digits that nobody reads over a shoulder; a browser is asked not to remember them. */
export function PinField({ label, where, value, onChange, isFirst = false, hasPad = false }: Props) {
  const { id, problem } = useFormField(where, value);
  return (
    <TextField
      className={form.field ?? ''}
      value={value}
      onChange={(typed) => onChange(typed.replace(/\D/g, '').slice(0, MOST_DIGITS))}
      isInvalid={problem !== undefined}
      validationBehavior="aria"
      autoFocus={isFirst}
      {...(id === undefined ? {} : { id })}
    >
      <Label className={form.label}>{label}</Label>
      <div className={form.box}>
        <Input
          className={`${form.input} ${form.bench} ${styles.pin}`}
          type="password"
          inputMode={hasPad ? 'none' : 'numeric'}
          autoComplete="off"
        />
      </div>
      {problem && (
        <p className={form.wrong}>
          {sayHere(problem, label).says} {sayHere(problem, label).mend}
        </p>
      )}
    </TextField>
  );
}
