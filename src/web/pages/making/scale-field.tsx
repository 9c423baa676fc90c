import { useEffect, useId, useRef } from 'react';
import { scaleWords } from '../../../words/index.ts';
import { useFormField } from '../../parts/form-context.ts';
import { sayHere } from '../../parts/say-here.ts';
import { State } from '../../parts/state.tsx';
import { TakeReading } from '../../scales/take-reading.tsx';
import { useTypedReading } from '../../scales/use-typed-reading.ts';
import { hasKeyboard } from '../../show/has-keyboard.ts';
import styles from './bench.module.css';

interface Props {
  readonly label: string;
  readonly where: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** What was typed is on its way: it stays as it was sent until the answer is there. */
  readonly isBusy?: boolean;
  /** It was tapped: where there are several, the keys type into it. */
  readonly onTouch?: () => void;
}

/** What the scale shows, in the large digits of the bench. */
export function ScaleField({ label, where, value, onChange, isBusy = false, onTouch }: Props) {
  const { id, problem } = useFormField(where, value);
  // The form shows it where it is in view; whoever listens hears it with the field.
  const saidId = useId();
  const said = problem && sayHere(problem, label);
  const field = useRef<HTMLInputElement>(null);
  const take = (grams: string) => !isBusy && onChange(grams);
  const typedByScale = useTypedReading(take);
  useEffect(() => {
    if (hasKeyboard()) field.current?.focus({ preventScroll: true });
  }, []);
  return (
    <div>
      <label htmlFor={id}>
        <span className="soft">{label}</span>
        <span className={styles.digits}>
          <input
            ref={field}
            id={id}
            inputMode="decimal"
            autoComplete="off"
            aria-label={label}
            aria-invalid={problem !== undefined}
            aria-describedby={problem ? saidId : undefined}
            readOnly={isBusy}
            value={value}
            onFocus={onTouch}
            onChange={(event) => onChange(event.target.value)}
          />
        </span>
        {said && (
          <span id={saidId} className="visually-hidden">
            {said.says} {said.mend}
          </span>
        )}
      </label>
      <span aria-live="polite">
        {typedByScale === value && <State kind="ready">{scaleWords.reader.typed}</State>}
      </span>
      <TakeReading onTake={take} />
    </div>
  );
}
