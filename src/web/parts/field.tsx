import { useState } from 'react';
import { Input, Label, Text, TextArea, TextField } from 'react-aria-components';
import type { Problem } from '../../core/problem.ts';
import { partWords } from '../../words/index.ts';
import { useSettled } from '../api/use-settled.ts';
import { checkTyped, type FieldKind } from './check-typed.ts';
import styles from './form.module.css';
import { useFormField } from './form-context.ts';
import { sayHere } from './say-here.ts';

interface Props {
  readonly label: string;
  /** Where the contract keeps it, such as `details.name`: problems found there are shown here. */
  readonly where: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly kind?: FieldKind;
  readonly unit?: string | undefined;
  /** Of a whole number: the least that is allowed; nought where nothing is said. */
  readonly least?: number;
  readonly hint?: string | undefined;
  readonly isOptional?: boolean;
  /** 64 px, big digits. */
  readonly isBench?: boolean;
  readonly isFirst?: boolean;
  /** What the page around it finds wrong with what is typed: told here, once the typing rests. */
  readonly wrong?: Problem | undefined;
  /** Told when the field gets the focus. */
  readonly onTouch?: () => void;
}

const INPUT_MODE: Partial<Record<FieldKind, 'decimal' | 'numeric'>> = {
  decimal: 'decimal',
  whole: 'numeric',
  digits: 'numeric',
};

/** Longer than a pause between two digits, shorter than anybody waits in vain (common practice, no source). */
const PAUSE_MS = 1000;

const inputClass = (kind: FieldKind, isBench: boolean): string =>
  [
    styles.input,
    (kind === 'decimal' || kind === 'whole') && styles.number,
    kind === 'long' && styles.long,
    isBench && styles.bench,
  ]
    .filter(Boolean)
    .join(' ');

/** A field for text or a number. Numbers stay text, read by the exact decimal reader; a comma is explained, not guessed at. */
export function Field(props: Props) {
  const {
    label,
    where,
    value,
    onChange,
    kind = 'text',
    unit,
    least,
    hint,
    isOptional = false,
    isBench = false,
  } = props;
  const { id, problem: found } = useFormField(where, value);
  // Left for a button: a message now would move the button away from under the finger.
  const [isLeft, setLeft] = useState(false);
  // Where an answer stands beside the field nobody leaves it: whoever waits is told why none comes.
  const isWaited = useSettled(value, PAUSE_MS) === value;
  const isTold = found !== undefined || isLeft || isWaited;
  const own = isTold ? (props.wrong ?? checkTyped(kind, value, where, { unit, least })) : undefined;
  // Whole things are no decimals: what the workshop says of a comma would be advice to write a part of a tin.
  const problem = kind === 'whole' ? (own ?? found) : (found ?? own);
  return (
    <TextField
      className={styles.field ?? ''}
      value={value}
      onChange={onChange}
      onFocus={() => {
        setLeft(false);
        props.onTouch?.();
      }}
      onBlur={(event) => setLeft(!(event.relatedTarget instanceof HTMLButtonElement))}
      isInvalid={problem !== undefined}
      validationBehavior="aria"
      autoFocus={props.isFirst ?? false}
      {...(id === undefined ? {} : { id })}
    >
      <Label className={styles.label}>
        {label} {isOptional && <span className={styles.may}>({partWords.optional})</span>}
      </Label>
      <div className={styles.box}>
        {kind === 'long' ? (
          <TextArea className={inputClass(kind, isBench)} />
        ) : (
          <Input
            className={inputClass(kind, isBench)}
            autoComplete="off"
            inputMode={INPUT_MODE[kind] ?? 'text'}
          />
        )}
        {unit && <span className={styles.unit}>{unit}</span>}
      </div>
      {hint && (
        <Text slot="description" className={styles.hint}>
          {hint}
        </Text>
      )}
      {problem && (
        <Text slot="errorMessage" className={styles.wrong}>
          {sayHere(problem, label).says} {sayHere(problem, label).mend}
        </Text>
      )}
    </TextField>
  );
}
