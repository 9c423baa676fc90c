import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { readDecimal, toText } from '../../../core/quantity/index.ts';
import { askAboutTestReading, LEAST_WEIGHINGS, type ReadingQuestion } from '../../../core/weighing/index.ts';
import { sayInstant, scaleWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useKeptDraft } from '../../api/use-kept-draft.ts';
import { useTimeZone } from '../../api/use-time-zone.ts';
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
import {
  asShown,
  beginTest,
  type TestDraft as Draft,
  mayBegin,
  NOTHING,
  readingOf,
  readingsOf,
} from './test-draft.ts';

const { guide: words } = scaleWords;
const NONE = [] as const;

/** What this scale cannot have shown: no answer makes it a reading. */
const CANNOT_BE: ReadonlySet<string> = new Set([
  'reading-not-a-step',
  'reading-above-capacity',
  'reading-negative',
]);

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
          onSubmit={() => mayBegin(draft) && put(beginTest(draft, new Date().toISOString()))}
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
          <Button type="submit" isAct isBench isDisabled={!mayBegin(draft)}>
            {words.start}
          </Button>
        </Form>
      ) : (
        <Weighings scale={scale} draft={draft} put={put} forget={forget} />
      )}
    </Page>
  );
}

function useTestDraft(scaleId: string, first: Draft) {
  const kept = useKeptDraft(`scale-test.${scaleId}`, { all: '' }, 'tablet');
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
  const zone = useTimeZone();
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
    const asked = isAnswered ? null : askAboutTestReading(readingOf(scale, draft, read.value.toFixed()));
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
            <p className="soft">{words.taken(draft.begunAt && sayInstant(draft.begunAt, zone))}</p>
            <p className={styles.taken}>{taken.map((grams) => asShown(grams, scale)).join(' · ')} g</p>
            <Button isBench onPress={() => put({ ...draft, readings: taken.slice(0, -1).join(' ') })}>
              {words.undo}
            </Button>{' '}
            <Button isBench onPress={forget}>
              {words.anew}
            </Button>
          </div>
        )}
      </div>
    </Form>
  );
}
