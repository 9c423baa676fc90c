import { type ReactNode, useState } from 'react';
import type { Problem } from '../../../core/problem.ts';
import { makingWords, sayProblem, stepWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { DeviationDialog } from './deviation-dialog.tsx';
import type { StepEntry, StepParts } from './use-step-entry.ts';

interface Props {
  readonly label: string;
  readonly entry: StepEntry;
  readonly doneWord: string;
  /** Worked out as the button is pressed: the timer runs on meanwhile. */
  readonly parts?: () => StepParts;
  /** What is pressed now is not what comes next: the timer still runs. */
  readonly isEarly?: boolean;
  readonly isDisabled?: boolean;
  readonly children?: ReactNode;
}

const NONE: readonly Problem[] = [];

/** Ends a step: its figures above, a remark for those who have one, one large button. */
export function StepForm({
  label,
  entry,
  doneWord,
  parts,
  isEarly = false,
  isDisabled = false,
  children,
}: Props) {
  const { draft, set, save, asked } = entry;
  return (
    <>
      <Form
        label={label}
        problems={asked.length > 0 ? NONE : save.problems}
        onSubmit={() => void entry.enter(parts?.())}
      >
        {children}
        <Remark value={draft.remark} onChange={set('remark')} />
        <Button type="submit" isAct={!isEarly} isBench isWide isBusy={save.isBusy} isDisabled={isDisabled}>
          {doneWord}
        </Button>
      </Form>
      <DeviationDialog
        title={makingWords.outsideTitle}
        caution={sayAll(asked)}
        isOpen={asked.length > 0}
        onClose={save.forget}
        onSaid={(said) => void entry.answer(said)}
      />
    </>
  );
}

function sayAll(asked: readonly Problem[]) {
  if (asked.length === 0) return undefined;
  const said = asked.map((each) => sayProblem(each));
  return {
    says: said.map(({ says }) => says).join(' '),
    mend: [...new Set(said.map(({ mend }) => mend))].join(' '),
  };
}

/** Nobody has to type: a tap opens the field. */
function Remark({ value, onChange }: { readonly value: string; readonly onChange: (value: string) => void }) {
  const [isOpen, setOpen] = useState(value !== '');
  if (!isOpen)
    return (
      <div>
        <Button isBench onPress={() => setOpen(true)}>
          {stepWords.addRemark}
        </Button>
      </div>
    );
  return (
    <Field
      label={makingWords.remark}
      where="remark"
      value={value}
      onChange={onChange}
      isOptional
      isBench
      isFirst
    />
  );
}
