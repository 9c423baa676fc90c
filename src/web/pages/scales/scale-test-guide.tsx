import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { readDecimal, toText } from '../../../core/quantity/index.ts';
import { askAboutTestReading, LEAST_WEIGHINGS, type ReadingQuestion } from '../../../core/weighing/index.ts';
import { scaleWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useKeptDraft } from '../../api/use-kept-draft.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { KeyPad } from '../../parts/key-pad.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { Page } from '../../shell/page.tsx';
import { typedDecimal } from '../../show/typed-decimal.ts';
import bench from '../making/bench.module.css';
import { ScaleField } from '../making/scale-field.tsx';
import type { Scale } from './scale.ts';
import { ScaleQuestion } from './scale-question.tsx';
import styles from './scales.module.css';

const { guide: words } = scaleWords;
const NONE = [] as const;

/** What this scale cannot have shown: no answer makes it a reading. */
const CANNOT_BE: ReadonlySet<string> = new Set([
  'reading-not-a-step',
  'reading-above-capacity',
  'reading-negative',
]);

/** Kept in the tab: ten weighings take minutes, and a tablet sleeps in between. */
const NOTHING = { weight: '', isBegun: '', readings: '', typed: '' };

export function ScaleTestGuide({ scale }: { readonly scale: Scale }) {
  const first = { ...NOTHING, weight: scale.checkWeightGrams ?? '' };
  const { draft, put, forget } = useTestDraft(scale.id, first);
  return (
    <Page
      title={words.title(scale.name)}
      above={scaleWords.above}
      isNarrow
      actions={<LinkButton to={`/scales/${scale.id}`}>{words.stop}</LinkButton>}
    >
      {draft.isBegun === '' ? (
        <Form
          label={words.title(scale.name)}
          problems={NONE}
          onSubmit={() => isMass(draft.weight) && put({ ...draft, isBegun: 'yes' })}
        >
          <p>{words.intro}</p>
          <Field
            label={words.weightLabel}
            where="weightGrams"
            kind="decimal"
            unit="g"
            isBench
            value={draft.weight}
            onChange={(weight) => put({ ...draft, weight })}
            hint={words.weightHint}
          />
          <Button type="submit" isAct isBench isDisabled={!isMass(draft.weight)}>
            {words.start}
          </Button>
        </Form>
      ) : (
        <Weighings scale={scale} draft={draft} put={put} forget={forget} />
      )}
    </Page>
  );
}

type Draft = typeof NOTHING;

function useTestDraft(scaleId: string, first: Draft) {
  const kept = useKeptDraft(`scale-test.${scaleId}`, { all: '' });
  const draft = readDraft(kept.draft.all, first);
  return { draft, put: (next: Draft) => kept.set('all')(JSON.stringify(next)), forget: kept.forget };
}

function readDraft(text: string, first: Draft): Draft {
  try {
    return { ...first, ...(JSON.parse(text || '{}') as Partial<Draft>) };
  } catch {
    // Written by another edition of the page: the test begins anew.
    return first;
  }
}

const isMass = (text: string): boolean => {
  const read = readDecimal(text, 'weightGrams');
  return read.ok && read.value.gt(0);
};

const readingsOf = ({ readings }: Draft): string[] => (readings === '' ? [] : readings.split(' '));

interface Props {
  readonly scale: Scale;
  readonly draft: Draft;
  readonly put: (next: Draft) => void;
  readonly forget: () => void;
}

function Weighings({ scale, draft, put, forget }: Props) {
  const [question, setQuestion] = useState<ReadingQuestion | null>(null);
  const save = useWrite('recordScaleTest');
  const navigate = useNavigate();
  const taken = readingsOf(draft);
  const place = Math.min(taken.length + 1, LEAST_WEIGHINGS);
  const setTyped = (typed: string) => {
    setQuestion(null);
    put({ ...draft, typed });
  };
  async function finish(readings: readonly string[]) {
    const body = { weightGrams: typedDecimal(draft.weight), readings: [...readings] };
    if (!(await save.write({ params: { id: scale.id }, body }))) return;
    forget();
    tell(words.saved);
    await navigate({ to: '/scales/$id', params: { id: scale.id } });
  }
  async function take(isAnswered: boolean) {
    const read = readDecimal(draft.typed, 'readings');
    if (!read.ok) return;
    const asked = isAnswered
      ? null
      : askAboutTestReading(readingOf(scale, draft, taken, read.value.toFixed()));
    setQuestion(asked);
    if (asked) return;
    const readings = [...taken, toText(read.value)];
    put({ ...draft, readings: readings.join(' '), typed: '' });
    if (readings.length === LEAST_WEIGHINGS) await finish(readings);
  }
  const isFull = taken.length >= LEAST_WEIGHINGS;
  const submit = () => void (isFull ? finish(taken) : take(false));
  const mayBeRight = question !== null && !CANNOT_BE.has(question.code);
  return (
    <Form label={words.title(scale.name)} problems={save.problems} onSubmit={submit}>
      <div className={styles.guide}>
        <h2 aria-live="polite">{words.of(place, LEAST_WEIGHINGS)}</h2>
        {!isFull && (
          <>
            <p>{words.putOn}</p>
            <div className={`${bench.figures} ${styles.alone}`}>
              <ScaleField
                label={words.reading}
                where="readings"
                value={draft.typed}
                onChange={setTyped}
                isBusy={save.isBusy}
              />
            </div>
            {question ? (
              <ScaleQuestion
                question={question}
                correct={words.correct}
                isRight={words.isRight}
                onCorrect={() => setTyped('')}
                onRight={mayBeRight ? () => void take(true) : null}
              />
            ) : (
              <KeyPad value={draft.typed} onChange={setTyped} isBusy={save.isBusy} />
            )}
          </>
        )}
        {!question && (
          <Button
            type="submit"
            isAct
            isBench
            isWide
            isBusy={save.isBusy}
            isDisabled={!isFull && draft.typed === ''}
          >
            {place === LEAST_WEIGHINGS ? words.last : words.next}
          </Button>
        )}
        {taken.length > 0 && (
          <div>
            <p className="soft">{words.taken}</p>
            <p className={styles.taken}>{taken.join(' · ')} g</p>
            <Button isBench onPress={() => put({ ...draft, readings: taken.slice(0, -1).join(' ') })}>
              {words.undo}
            </Button>
          </div>
        )}
      </div>
    </Form>
  );
}

const readingOf = (scale: Scale, { weight }: Draft, earlier: readonly string[], grams: string) => ({
  grams,
  weightGrams: weight,
  readabilityGrams: scale.readabilityGrams,
  capacityGrams: scale.capacityGrams,
  earlier,
});
