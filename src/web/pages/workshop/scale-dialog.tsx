import { nominalCheckWeights } from '../../../catalogue/index.ts';
import { readDecimal } from '../../../core/quantity/index.ts';
import { proposeCheckWeights } from '../../../core/weighing/index.ts';
import { partWords, scaleWords, termWords, workshopWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useEditing } from '../../api/use-editing.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Conflict } from '../../parts/conflict.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { Select } from '../../parts/select.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { draftOfScale, NEW_SCALE, readScaleDraft, type ScaleDraft } from './scale-draft.ts';
import type { Scale } from './workshop.ts';

interface Props {
  /** Left out: a new one. */
  readonly scale: Scale | undefined;
  readonly onClose: () => void;
}

const { scales: words } = workshopWords;
const { weight } = scaleWords;
const CLASSES = Object.entries(termWords.accuracyClass).map(([id, name]) => ({ id, name }));

const describe = (draft: ScaleDraft) =>
  [
    [words.name, draft.name],
    [words.capacity, draft.capacityGrams],
    [words.readability, draft.readabilityGrams],
    [words.repeatability, draft.repeatabilityGrams],
    [words.accuracyClass, draft.accuracyClass],
    [words.interval, draft.verificationIntervalGrams],
    [weight.mass, draft.checkWeightGrams],
    [weight.tolerance, draft.checkToleranceGrams],
  ] as const;

/** Weights that suit what it holds; nothing while that is not typed. */
function proposeFor(capacity: string): number[] {
  const read = readDecimal(capacity, 'capacityGrams');
  return read.ok ? proposeCheckWeights(read.value, [], nominalCheckWeights) : [];
}

export function ScaleDialog({ scale, onClose }: Props) {
  const editing = useEditing(scale ?? NEW_SCALE, draftOfScale);
  const { draft, set } = editing;
  const save = useWrite('saveScale');
  const title = scale ? words.changeTitle : words.add;
  const submit = async () => {
    const which = scale ? { id: scale.id, version: editing.version } : {};
    if (!(await save.write({ body: { scale: { ...which, ...readScaleDraft(draft) } } }))) return;
    tell(words.saved);
    onClose();
  };
  const grams = { kind: 'decimal', unit: 'g' } as const;
  return (
    <Dialog title={title} isOpen onClose={onClose} isHeld={editing.isChanged}>
      <Conflict problems={save.problems} editing={editing} describe={describe} onChosen={save.forget} />
      <Form label={title} problems={save.problems} onSubmit={() => void submit()}>
        <Field label={words.name} where="scale.name" value={draft.name} onChange={set('name')} />
        <SideBySide>
          <Field
            {...grams}
            label={words.capacity}
            where="scale.capacityGrams"
            value={draft.capacityGrams}
            onChange={set('capacityGrams')}
          />
          <Field
            {...grams}
            label={words.readability}
            where="scale.readabilityGrams"
            value={draft.readabilityGrams}
            onChange={set('readabilityGrams')}
          />
        </SideBySide>
        <Field
          {...grams}
          label={words.repeatability}
          where="scale.repeatabilityGrams"
          value={draft.repeatabilityGrams}
          onChange={set('repeatabilityGrams')}
          hint={words.repeatabilityHint}
          isOptional
        />
        <Select
          label={words.accuracyClass}
          where="scale.accuracyClass"
          value={draft.accuracyClass}
          onChange={set('accuracyClass')}
          choices={CLASSES}
          none={words.noClass}
        />
        {draft.accuracyClass !== '' && (
          <Field
            {...grams}
            label={words.interval}
            where="scale.verificationIntervalGrams"
            value={draft.verificationIntervalGrams}
            onChange={set('verificationIntervalGrams')}
            isOptional
          />
        )}
        <SideBySide>
          <Field
            {...grams}
            label={weight.mass}
            where="scale.checkWeightGrams"
            value={draft.checkWeightGrams}
            onChange={set('checkWeightGrams')}
            hint={weight.massHint(proposeFor(draft.capacityGrams))}
            isOptional
          />
          <Field
            {...grams}
            label={weight.tolerance}
            where="scale.checkToleranceGrams"
            value={draft.checkToleranceGrams}
            onChange={set('checkToleranceGrams')}
            hint={weight.toleranceHint}
            isOptional
          />
        </SideBySide>
        <Button type="submit" isAct isBusy={save.isBusy}>
          {partWords.save}
        </Button>
      </Form>
    </Dialog>
  );
}
