import { useState } from 'react';
import { makingWords, sayGrams, handWords as words } from '../../../words/index.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { typedDecimal } from '../../show/typed-decimal.ts';
import type { Batch } from './batch.ts';

/** That was all: what came out is weighed, and the formula gets its name, or keeps the one for the time being. */
export function HandFinish({ batch, onClose }: { readonly batch: Batch; readonly onClose: () => void }) {
  const [grams, setGrams] = useState('');
  const [name, setName] = useState('');
  const save = useBenchWrite('finishWithoutRecipe');
  /** It was begun as a formula made again: another name is asked about. */
  const isAsked = save.problems.some(({ code }) => code === 'made-again-named');
  const isGone = save.problems.some(({ code }) => code === 'yield-half-gone');
  async function submit({ isNewFormula = false, isYieldSure = false } = {}): Promise<void> {
    if (grams.trim() === '') return;
    const body = { yieldGrams: typedDecimal(grams), name, isNewFormula, isYieldSure };
    if (await save.write({ params: { id: batch.id }, body })) onClose();
  }
  return (
    <Dialog isBench title={words.finishTitle} isOpen onClose={onClose} isHeld={name !== '' || grams !== ''}>
      <Form label={words.finishTitle} problems={save.problems} onSubmit={() => void submit()}>
        <Field
          label={words.yieldGrams}
          where="yieldGrams"
          kind="decimal"
          unit="g"
          value={grams}
          onChange={setGrams}
          isBench
          isFirst
        />
        <Field
          label={words.name}
          where="name"
          value={name}
          onChange={setName}
          hint={words.nameHint}
          isOptional
          isBench
        />
        {isAsked && (
          <Button
            isBench
            isWide
            isBusy={save.isBusy}
            onPress={() => void submit({ isNewFormula: true, isYieldSure: true })}
          >
            {words.writeToo(name)}
          </Button>
        )}
        {isGone && (
          <Button isBench isWide isBusy={save.isBusy} onPress={() => void submit({ isYieldSure: true })}>
            {makingWords.yieldSure(sayGrams(typedDecimal(grams)))}
          </Button>
        )}
        <Button type="submit" isAct isBench isWide isBusy={save.isBusy} isDisabled={grams.trim() === ''}>
          {words.finishTap}
        </Button>
      </Form>
    </Dialog>
  );
}
