import { useState } from 'react';
import { closeQuestionCodes } from '../../../core/filling/index.ts';
import type { Problem } from '../../../core/problem.ts';
import { exact } from '../../../core/quantity/index.ts';
import { closeWords, fillingWords } from '../../../words/index.ts';
import { useDraft } from '../../api/use-draft.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { CheckBox } from '../../parts/check-box.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { typedDecimal } from '../../show/typed-decimal.ts';
import { FillQuestion } from './fill-question.tsx';
import { readSpoilt } from './read-spoilt.ts';
import type { Run } from './run.ts';

const NONE: readonly Problem[] = [];
const NOTHING_SURE: readonly string[] = [];
const isCloseQuestion = ({ code }: Problem): boolean => closeQuestionCodes.some((each) => each === code);

/** Where no further tin can be filled of it, nothing is kept; a bowl that holds more is weighed. */
const leftOver = (run: Run): string =>
  exact(run.bowlLeftGrams)
    .minus(run.plannedSampleGrams ?? 0)
    .lt(run.aimGrams) && run.others.every(({ state }) => state !== 'filling' && state !== 'planned')
    ? '0'
    : '';

/** The batch's sample is offered once; whoever keeps another one says so. */
const firstDraft = (run: Run) => ({
  keeps: run.sampleKeptIn === null,
  sample: run.plannedSampleGrams ?? '',
  why: run.sampleKeptIn === null ? '' : closeWords.sampleKept(run.sampleKeptIn),
  left: null as string | null,
  tins: null as string | null,
  lids: '0',
  labels: '0',
  backTins: '',
  backLids: '',
  backLabels: '',
});

/** Counting, keeping the sample, weighing what is left: then the tins become a lot that waits for its release. */
export function CloseRun({ run }: { readonly run: Run }) {
  const { draft: typed, set, isChanged } = useDraft(firstDraft(run));
  const { putAside } = run.summary;
  // Tins that were put aside are spoilt, unless somebody counted otherwise.
  const draft = { ...typed, tins: typed.tins ?? String(putAside), left: typed.left ?? leftOver(run) };
  const close = useWrite('closeRun');
  useUnsaved(isChanged, close);
  // What was in the way of closing may be out of it once a tin is filled or taken out.
  const tinsNow = JSON.stringify(run.weights);
  const [refusedWith, setRefusedWith] = useState(tinsNow);
  const asked = close.problems.find(isCloseQuestion);
  const [sure, setSure] = useState(NOTHING_SURE);
  const submit = (answers: readonly string[] = NOTHING_SURE) => {
    setRefusedWith(tinsNow);
    setSure(answers);
    const counted = readSpoilt(draft);
    if (!counted.ok) return close.refuse(counted.problems);
    return close.write({
      params: { id: run.id },
      body: {
        retained: draft.keeps
          ? { keep: true, grams: typedDecimal(draft.sample) }
          : { keep: false, reason: draft.why },
        leftGrams: typedDecimal(draft.left),
        ...counted.value,
        sure: [...answers],
      },
    });
  };
  return (
    <Card title={fillingWords.closeTitle}>
      <p className="soft">{fillingWords.closeSays}</p>
      <Form
        label={fillingWords.closeTitle}
        problems={refusedWith === tinsNow && !asked ? close.problems : NONE}
        onSubmit={() => void submit()}
      >
        <CheckBox isChecked={draft.keeps} onChange={set('keeps')}>
          {fillingWords.keepSample}
        </CheckBox>
        <SideBySide>
          {draft.keeps ? (
            <Field
              label={fillingWords.sample}
              where="retained.grams"
              kind="decimal"
              unit="g"
              value={draft.sample}
              onChange={set('sample')}
              isBench
            />
          ) : (
            <Field
              label={fillingWords.declineWhy}
              where="retained.reason"
              value={draft.why}
              onChange={set('why')}
              isBench
            />
          )}
          <Field
            label={fillingWords.left}
            where="leftGrams"
            kind="decimal"
            unit="g"
            value={draft.left}
            onChange={set('left')}
            hint={draft.left === '' ? closeWords.leftShould(run.bowlLeftGrams) : closeWords.leftHint}
            isBench
          />
        </SideBySide>
        {putAside > 0 && <p className="soft">{closeWords.aside(putAside)}</p>}
        <Counts run={run} draft={draft} set={set} />
        <Button type="submit" isAct isBench isBusy={close.isBusy}>
          {fillingWords.close}
        </Button>
      </Form>
      <FillQuestion
        asked={asked}
        sure={closeWords.sure}
        again={closeWords.notYet}
        onSure={() => void submit([...sure, asked?.code ?? ''])}
        onClose={close.forget}
      />
    </Card>
  );
}

type Draft = ReturnType<typeof firstDraft> & { readonly tins: string; readonly left: string };
type TextKey = Exclude<keyof Draft, 'keeps'>;

interface CountProps {
  readonly run: Run;
  readonly draft: Draft;
  readonly set: (key: TextKey) => (typed: string) => void;
}

/** Of each part what was spoilt; where it was counted out, what goes back too. */
const Counts = ({ run, draft, set }: CountProps) => {
  const { issued } = run.ready;
  const count = (key: TextKey, label: string, where: string, hint?: string) => (
    <Field
      label={label}
      where={where}
      kind="whole"
      value={draft[key]}
      onChange={set(key)}
      isOptional={hint !== undefined}
      hint={hint}
      isBench
    />
  );
  return (
    <>
      <SideBySide>
        {count('tins', fillingWords.spoiltTins, 'spoiltTins')}
        {count('lids', fillingWords.spoiltLids, 'spoiltLids')}
        {count('labels', fillingWords.spoiltLabels, 'spoiltLabels')}
      </SideBySide>
      {issued && (
        <SideBySide>
          {count('backTins', closeWords.backTins, 'backTins', closeWords.of(issued.tins))}
          {issued.lids !== null &&
            count('backLids', closeWords.backLids, 'backLids', closeWords.of(issued.lids))}
          {issued.labels !== null &&
            count('backLabels', closeWords.backLabels, 'backLabels', closeWords.of(issued.labels))}
        </SideBySide>
      )}
    </>
  );
};
