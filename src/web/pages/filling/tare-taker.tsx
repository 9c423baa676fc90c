import { useEffect, useRef, useState } from 'react';
import { askAboutTares, findOddTares, findTareSpread, isTareWide } from '../../../core/filling/index.ts';
import type { Problem } from '../../../core/problem.ts';
import { exact, toText } from '../../../core/quantity/index.ts';
import { sayGrams, sayProblem, tareWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { KeyPad } from '../../parts/key-pad.tsx';
import { State } from '../../parts/state.tsx';
import { typedDecimal } from '../../show/typed-decimal.ts';
import bench from '../making/bench.module.css';
import { ScaleField } from '../making/scale-field.tsx';
import { whyNotWeighed } from '../making/weight-verdict.ts';
import styles from './run.module.css';

interface Props {
  readonly tares: readonly string[];
  readonly onChange: (tares: readonly string[]) => void;
  readonly tolerableErrorGrams: string | null;
}

/** Ten as a rule (common practice, no source). */
export const TARES = 10;

/** Empty tins one after another, by key or reader; their mean and how they differ as they come. */
export function TareTaker({ tares, onChange, tolerableErrorGrams }: Props) {
  const [typed, setTyped] = useState('');
  const isWrong = typed.trim() === '' || whyNotWeighed(typed) !== undefined;
  const [asked, setAsked] = useState<Problem>();
  function keep(isSure = false) {
    if (isWrong) return;
    const next = [...tares, typedDecimal(typed)];
    const question = isSure || findOddTares(tares).length > 0 ? null : askAboutTares(next);
    if (question) return setAsked(question);
    setAsked(undefined);
    onChange(next);
    setTyped('');
  }
  const type = (text: string) => {
    setAsked(undefined);
    setTyped(text);
  };
  // A reader ends with Enter, which would send the whole form around it.
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const place = box.current;
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== 'Enter') return;
      event.preventDefault();
      keep();
    };
    place?.addEventListener('keydown', onKey);
    return () => place?.removeEventListener('keydown', onKey);
  });
  return (
    <fieldset className={styles.tares}>
      <legend>{tareWords.title}</legend>
      <p className="soft">{tareWords.says}</p>
      <TareSum tares={tares} tolerableErrorGrams={tolerableErrorGrams} />
      <KeptTares tares={tares} onChange={onChange} />
      <div className={`${bench.figures} ${styles.single}`} ref={box}>
        <ScaleField
          label={tareWords.number(tares.length + 1)}
          where={`tares[${tares.length}]`}
          value={typed}
          onChange={type}
        />
      </div>
      <KeyPad value={typed} onChange={type} />
      {asked && (
        <p role="alert">
          <State kind="watch">{sayProblem(asked).says}</State>
        </p>
      )}
      <div className={styles.ways}>
        <Button isBench isDisabled={isWrong} onPress={() => keep(asked !== undefined)}>
          {asked ? tareWords.keepOdd : tareWords.keep}
        </Button>
      </div>
    </fieldset>
  );
}

/** Each of them can be taken out by a tap, whenever it is noticed. */
const KeptTares = ({ tares, onChange }: Pick<Props, 'tares' | 'onChange'>) =>
  tares.length === 0 ? null : (
    <div className={styles.ways}>
      {tares
        .map((grams, index) => ({ grams, index }))
        .map(({ grams, index }) => (
          <Button
            key={index}
            isBench
            label={tareWords.takeOut(index + 1, grams)}
            onPress={() => onChange(tares.filter((_, each) => each !== index))}
          >
            {sayGrams(grams)} ×
          </Button>
        ))}
    </div>
  );

function TareSum({ tares, tolerableErrorGrams }: Omit<Props, 'onChange'>) {
  const found = tares.length > 1 ? findTareSpread(tares) : null;
  const spread = found?.ok ? found.value : null;
  const odd = findOddTares(tares).map((index) => index + 1);
  const shown = (grams: Parameters<typeof exact>[0]) => toText(exact(grams).toDecimalPlaces(3));
  return (
    <div aria-live="polite">
      {tares.length > 0 && (
        <p>
          <strong>{tareWords.of(tares.length)}</strong>
        </p>
      )}
      {spread && odd.length === 0 && (
        <p>
          {tareWords.found(
            shown(spread.meanGrams),
            shown(spread.standardDeviationGrams),
            shown(spread.allowanceGrams),
          )}
        </p>
      )}
      {spread && tares.length >= TARES / 2 && isTareWide(spread, tolerableErrorGrams) === true && (
        <p>
          <State kind="watch">
            {tareWords.wide(
              toText(
                exact(tolerableErrorGrams ?? 0)
                  .times('0.25')
                  .toDecimalPlaces(3),
              ),
            )}
          </State>
        </p>
      )}
      {odd.length > 0 && (
        <p>
          <State kind="watch">{tareWords.odd(odd.join(', '), odd.length === 1)}</State>
        </p>
      )}
      {tares.length > 0 && tares.length < TARES && (
        <p className="soft">{tareWords.more(TARES - tares.length)}</p>
      )}
    </div>
  );
}
