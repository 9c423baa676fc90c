import { useState } from 'react';
import type { Problem } from '../../../core/problem.ts';
import { fillingWords } from '../../../words/index.ts';
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
import { readSpoilt } from './read-spoilt.ts';
import type { Run } from './run.ts';

/** Counting, keeping the sample, weighing what is left: then the tins become a lot that waits for its release. */
export function CloseRun({ run }: { readonly run: Run }) {
  const { draft, set, isChanged } = useDraft({
    keeps: true,
    sample: run.plannedSampleGrams ?? '',
    why: '',
    left: '0',
    tins: '0',
    lids: '0',
    labels: '0',
  });
  const close = useWrite('closeRun');
  useUnsaved(isChanged, close);
  // What was in the way of closing may be out of it once a tin is filled or taken out.
  const tinsNow = JSON.stringify(run.weights);
  const [refusedWith, setRefusedWith] = useState(tinsNow);
  const submit = () => {
    setRefusedWith(tinsNow);
    const spoilt = readSpoilt(draft);
    if (!spoilt.ok) return close.refuse(spoilt.problems);
    return close.write({
      params: { id: run.id },
      body: {
        retained: draft.keeps
          ? { keep: true, grams: typedDecimal(draft.sample) }
          : { keep: false, reason: draft.why },
        leftGrams: typedDecimal(draft.left),
        ...spoilt.value,
      },
    });
  };
  return (
    <Card title={fillingWords.closeTitle}>
      <p className="soft">{fillingWords.closeSays}</p>
      <Form
        label={fillingWords.closeTitle}
        problems={refusedWith === tinsNow ? close.problems : NONE}
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
            isBench
          />
        </SideBySide>
        <SideBySide>
          <Field
            label={fillingWords.spoiltTins}
            where="spoiltTins"
            kind="whole"
            value={draft.tins}
            onChange={set('tins')}
            isBench
          />
          <Field
            label={fillingWords.spoiltLids}
            where="spoiltLids"
            kind="whole"
            value={draft.lids}
            onChange={set('lids')}
            isBench
          />
          <Field
            label={fillingWords.spoiltLabels}
            where="spoiltLabels"
            kind="whole"
            value={draft.labels}
            onChange={set('labels')}
            isBench
          />
        </SideBySide>
        <Button type="submit" isAct isBench isBusy={close.isBusy}>
          {fillingWords.close}
        </Button>
      </Form>
    </Card>
  );
}

const NONE: readonly Problem[] = [];
