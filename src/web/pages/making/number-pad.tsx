import { type ReactNode, useEffect, useRef, useState } from 'react';
import { useFormField } from '../../parts/form-context.ts';
import { KeyPad } from '../../parts/key-pad.tsx';
import { sayHere } from '../../parts/say-here.ts';
import { hasKeyboard } from '../../show/has-keyboard.ts';
import { typedProblem } from '../../show/typed-problem.ts';
import styles from './step.module.css';

export interface PadField<Name extends string> {
  readonly name: Name;
  readonly label: string;
  readonly where: string;
  readonly unit: string;
  readonly hint?: string;
}

interface Props<Name extends string> {
  readonly fields: readonly PadField<Name>[];
  readonly values: Readonly<Record<Name, string>>;
  readonly set: (name: Name) => (value: string) => void;
  /** Figures beside the fields: what is wanted. */
  readonly beside?: ReactNode;
  /** On its way: it stays as it was sent until the answer is there. */
  readonly isBusy?: boolean;
  /** Where there is a keyboard its digits go into the first field at once. */
  readonly isFirst?: boolean;
}

/** Large digits and one set of keys for them: the keys type into the field that was tapped last. */
export function NumberPad<Name extends string>({ fields, values, set, beside, ...more }: Props<Name>) {
  const { isBusy = false, isFirst = false } = more;
  const [active, setActive] = useState(fields[0]?.name);
  // What stands in a field that was just tapped is replaced by the first key, as on a calculator.
  const [isFresh, setFresh] = useState(() => fields[0] !== undefined && values[fields[0].name] !== '');
  const pad = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (isFirst && hasKeyboard()) pad.current?.querySelector('input')?.focus({ preventScroll: true });
  }, [isFirst]);
  const current = fields.find(({ name }) => name === active) ?? fields[0];
  if (!current) return null;
  return (
    <div className={styles.pad} ref={pad}>
      <div className={styles.fields}>
        {beside}
        {fields.map((field) => (
          <DigitField
            key={field.name}
            field={field}
            value={values[field.name]}
            onChange={(value) => {
              setFresh(false);
              set(field.name)(value);
            }}
            isActive={field.name === current.name}
            onTouch={() => {
              if (field.name !== current.name) setFresh(true);
              setActive(field.name);
            }}
            isBusy={isBusy}
          />
        ))}
      </div>
      <KeyPad
        value={isFresh ? '' : values[current.name]}
        onChange={(value) => {
          setFresh(false);
          set(current.name)(value);
        }}
        isBusy={isBusy}
      />
    </div>
  );
}

interface FieldProps {
  readonly field: PadField<string>;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly isActive: boolean;
  readonly onTouch: () => void;
  readonly isBusy: boolean;
}

function DigitField({ field, value, onChange, isActive, onTouch, isBusy }: FieldProps) {
  const { id, problem: found } = useFormField(field.where, value);
  const problem = found ?? typedProblem(value, field.where, field.unit);
  const saidId = `${id}-said`;
  const said = problem && sayHere(problem, field.label);
  const look = [styles.field, isActive && styles.active, problem && styles.wrong].filter(Boolean).join(' ');
  return (
    <label className={look} htmlFor={id}>
      <span className="soft">{field.label}</span>
      <span className={styles.typed}>
        <input
          id={id}
          // The keys stand below; a keyboard or a scale that types works all the same.
          inputMode="none"
          autoComplete="off"
          aria-invalid={problem !== undefined}
          aria-describedby={saidId}
          readOnly={isBusy}
          value={value}
          onFocus={onTouch}
          onChange={(event) => onChange(event.target.value)}
        />
        <small>{field.unit}</small>
      </span>
      <span id={saidId} className="small">
        {said ? `${said.says} ${said.mend}` : field.hint}
      </span>
    </label>
  );
}
