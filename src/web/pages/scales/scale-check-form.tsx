import { useState } from 'react';
import { exact, readDecimal, roundToStep, toText } from '../../../core/quantity/index.ts';
import { askAboutReading, judgeScaleCheck, type ReadingQuestion } from '../../../core/weighing/index.ts';
import { sayGrams, scaleWords } from '../../../words/index.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { useKeptDraft } from '../../api/use-kept-draft.ts';
import { Button } from '../../parts/button.tsx';
import { Form } from '../../parts/form.tsx';
import { KeyPad } from '../../parts/key-pad.tsx';
import { State } from '../../parts/state.tsx';
import { typedDecimal } from '../../show/typed-decimal.ts';
import bench from '../making/bench.module.css';
import { ScaleField } from '../making/scale-field.tsx';
import type { Scale } from './scale.ts';
import { ScaleQuestion } from './scale-question.tsx';
import styles from './scales.module.css';

const { check: words } = scaleWords;

/** What this scale cannot have shown: no answer makes it a reading. */
const CANNOT_BE: ReadonlySet<string> = new Set(['reading-not-a-step', 'reading-above-capacity']);

/** What is known of the weight, with its limit. */
export type KnownCheck = NonNullable<Scale['check']> & {
  readonly limitGrams: string;
  readonly limitBy: NonNullable<NonNullable<Scale['check']>['limitBy']>;
};

interface Props {
  readonly scale: Scale;
  readonly check: KnownCheck;
}

/** What this scale could not show for its weight, or shows for another reason than an error of its own. */
function askOf(scale: Scale, { weightGrams }: KnownCheck, typed: string): ReadingQuestion | null {
  const read = readDecimal(typed, 'readingGrams');
  if (!read.ok) return null;
  return askAboutReading({
    grams: read.value,
    targetGrams: weightGrams,
    readabilityGrams: scale.readabilityGrams,
    capacityGrams: scale.capacityGrams,
  });
}

export function ScaleCheckForm({ scale, check }: Props) {
  const { draft, set, forget } = useKeptDraft(`scale-check.${scale.id}`, { reading: '' });
  const [question, setQuestion] = useState<ReadingQuestion | null>(null);
  /** What was entered last: its verdict stands here though the workshop may not have it yet. */
  const [entered, setEntered] = useState<string | null>(null);
  const save = useBenchWrite('recordScaleCheck');
  const { weightGrams, toleranceGrams, limitGrams, limitBy } = check;

  async function enter(isAnswered: boolean) {
    if (draft.reading === '') return;
    const asked = isAnswered ? null : askOf(scale, check, draft.reading);
    setQuestion(asked);
    if (asked) return;
    const readingGrams = typedDecimal(draft.reading);
    const body = { weightGrams, toleranceGrams, readingGrams };
    if (!(await save.write({ params: { id: scale.id }, body }))) return;
    setEntered(readingGrams);
    forget();
  }
  const judged = entered === null ? null : judgeScaleCheck(entered, weightGrams, limitGrams);
  if (judged?.isGood)
    return <State kind="ready">{words.good(sayGrams(toText(judged.deviationGrams.abs())))}</State>;
  return (
    <Form label={words.title(scale.name)} problems={save.problems} onSubmit={() => void enter(false)}>
      {judged ? (
        <NotGood off={toText(judged.deviationGrams.abs())} limitGrams={limitGrams} />
      ) : check.isHeld ? (
        <State kind="stop">{words.held}</State>
      ) : (
        <p>{words.before}</p>
      )}
      <p>
        <strong>{words.putOn(sayGrams(weightGrams))}</strong>{' '}
        {words.mayBe(...mayShow(check, scale.readabilityGrams))}
      </p>
      <div className={bench.figures}>
        <div>
          <p className="soft">{scaleWords.weight.mass}</p>
          <p className={bench.digits}>
            {weightGrams}
            <small>g</small>
          </p>
        </div>
        <ScaleField
          label={words.reading}
          where="readingGrams"
          value={draft.reading}
          onChange={(value) => {
            setQuestion(null);
            set('reading')(value);
          }}
          isBusy={save.isBusy}
        />
      </div>
      {question ? (
        <ScaleQuestion
          question={question}
          correct={words.correct}
          isRight={words.isRight}
          onCorrect={() => {
            setQuestion(null);
            forget();
          }}
          onRight={CANNOT_BE.has(question.code) ? null : () => void enter(true)}
        />
      ) : (
        <>
          <KeyPad value={draft.reading} onChange={set('reading')} isBusy={save.isBusy} />
          <Button type="submit" isAct isBench isWide isBusy={save.isBusy} isDisabled={draft.reading === ''}>
            {judged ? words.again : words.enter}
          </Button>
        </>
      )}
      <p className="soft small">
        {words.why(limitBy, sayGrams(limitGrams))} {words.source(limitBy)}.{' '}
        {check.isWeightRough && words.rough}
      </p>
    </Form>
  );
}

/** In digits that the scale shows: from the first to the last of them that is good. */
const mayShow = ({ weightGrams, limitGrams }: KnownCheck, step: string): readonly [string, string] => [
  sayGrams(toText(roundToStep(exact(weightGrams).minus(limitGrams), step, 'up'))),
  sayGrams(toText(roundToStep(exact(weightGrams).plus(limitGrams), step, 'down'))),
];

const NotGood = ({ off, limitGrams }: { readonly off: string; readonly limitGrams: string }) => (
  <div role="alert" className={styles.facts}>
    <State kind="stop">{words.bad(sayGrams(off), sayGrams(limitGrams))}</State>
    <p>{words.first}:</p>
    <ol className={styles.steps}>
      {words.steps.map((step) => (
        <li key={step}>{step}</li>
      ))}
    </ol>
    <p>{words.held}</p>
  </div>
);
