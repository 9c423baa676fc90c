import { useState } from 'react';
import { handWords as words } from '../../../words/index.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { typedDecimalOrNull } from '../../show/typed-decimal.ts';
import type { Batch } from './batch.ts';
import styles from './mishap.module.css';

type Kind = keyof typeof words.stepKind;
const KINDS = Object.keys(words.stepKind) as Kind[];

/** A step as it is done, with temperature and time where they are known: it becomes one of the method. */
export function HandStep({ batch, onClose }: { readonly batch: Batch; readonly onClose: () => void }) {
  const [kind, setKind] = useState<Kind>('melt');
  const [what, setWhat] = useState('');
  const [celsius, setCelsius] = useState('');
  const [minutes, setMinutes] = useState('');
  const save = useBenchWrite('stepWithoutRecipe');
  async function submit(): Promise<void> {
    const body = {
      kind,
      what: what.trim() || words.stepKind[kind],
      celsius: typedDecimalOrNull(celsius),
      minutes: typedDecimalOrNull(minutes),
    };
    if (await save.write({ params: { id: batch.id }, body })) onClose();
  }
  return (
    <Dialog isBench title={words.stepTitle} isOpen onClose={onClose} isHeld={what !== ''}>
      <Form label={words.stepTitle} problems={save.problems} onSubmit={() => void submit()}>
        <div className={styles.whys}>
          {KINDS.map((each) => (
            <Button key={each} isBench isAct={each === kind} onPress={() => setKind(each)}>
              {words.stepKind[each]}
            </Button>
          ))}
        </div>
        <Field label={words.stepWhat} where="what" value={what} onChange={setWhat} isOptional isBench />
        <SideBySide>
          <Field
            label={words.celsius}
            where="celsius"
            kind="decimal"
            unit="°C"
            value={celsius}
            onChange={setCelsius}
            isOptional
            isBench
          />
          <Field
            label={words.minutes}
            where="minutes"
            kind="decimal"
            value={minutes}
            onChange={setMinutes}
            isOptional
            isBench
          />
        </SideBySide>
        <Button type="submit" isAct isBench isWide isBusy={save.isBusy}>
          {words.stepTap}
        </Button>
      </Form>
    </Dialog>
  );
}
