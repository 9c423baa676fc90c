import { useState } from 'react';
import {
  awayWords,
  makingWords,
  sayProblem,
  weighInWords,
  handWords as words,
} from '../../../words/index.ts';
import { useKeptDraft } from '../../api/use-kept-draft.ts';
import { useWrite } from '../../api/use-write.ts';
import { useWaiting } from '../../away/use-kept.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Form } from '../../parts/form.tsx';
import { KeyPad } from '../../parts/key-pad.tsx';
import { State } from '../../parts/state.tsx';
import { typedDecimal } from '../../show/typed-decimal.ts';
import type { Batch } from './batch.ts';
import styles from './bench.module.css';
import { Dock } from './dock.tsx';
import type { HandThing } from './hand-what.tsx';
import mishap from './mishap.module.css';
import { sayNotWeighed } from './say-not-weighed.ts';
import { ScaleField } from './scale-field.tsx';
import { useNewThing } from './use-new-thing.ts';
import { whyNotWeighed } from './weight-verdict.ts';

interface Props {
  readonly batch: Batch | null;
  readonly formulaId: string | null;
  readonly thing: HandThing;
  readonly kind: 'mixture' | 'base';
  readonly scales: readonly { readonly id: string; readonly name: string }[];
  readonly onOther: () => void;
  readonly onDone: (batchId: string) => void;
}

/** The same digits, keys and button as at any weighing; only that no weight is asked for. */
export function HandWeigh({ batch, formulaId, thing, kind, scales, onOther, onDone }: Props) {
  const { draft, set, forget } = useKeptDraft('bench.by-hand.weighing', { grams: '', scaleId: '' });
  const [lotId, setLotId] = useState(thing.lotId);
  const save = useWrite('weighWithoutRecipe');
  const takeIn = useNewThing();
  // What lies on this tablet was done before this: weighed first, it would stand after it in the method.
  const waits = useWaiting(batch?.id ?? '').length;
  const doubt = save.problems.find(({ code }) => code === 'reading-doubtful');
  const wrong = draft.grams === '' ? undefined : whyNotWeighed(draft.grams, makingWords.gramsIn);

  async function enter(isReadingSure = false): Promise<void> {
    if (draft.grams === '' || wrong || waits > 0) return;
    const actualGrams = typedDecimal(draft.grams);
    const lot = lotId ?? (await takeIn.take(thing.name, actualGrams));
    if (lot === undefined) return;
    setLotId(lot);
    const answer = await save.write({
      body: {
        batchId: batch?.id ?? null,
        formulaId: batch ? null : formulaId,
        kind,
        lotId: lot,
        scaleId: draft.scaleId === '' ? null : draft.scaleId,
        actualGrams,
        isReadingSure,
      },
    });
    if (!answer) return;
    set('grams')('');
    forget();
    onDone(answer.id);
  }
  return (
    <>
      <Form
        label={words.weigh(thing.name)}
        problems={doubt ? [] : [...takeIn.problems, ...save.problems]}
        onSubmit={() => void enter()}
        isSaidWithin
      >
        <div className={styles.screen}>
          <div className={mishap.whys}>
            {scales.map((scale) => (
              <Button
                key={scale.id}
                isBench
                isAct={draft.scaleId === scale.id}
                onPress={() => set('scaleId')(draft.scaleId === scale.id ? '' : scale.id)}
              >
                {scale.name}
              </Button>
            ))}
          </div>
          <Dock>
            <div className={styles.figures} style={{ gridTemplateColumns: '1fr' }}>
              <ScaleField
                label={makingWords.gramsIn}
                where="actualGrams"
                value={draft.grams}
                onChange={set('grams')}
                isBusy={save.isBusy}
              />
            </div>
            {waits > 0 && <State kind="watch">{awayWords.weighWaits(waits)}</State>}
            {wrong && <p aria-live="polite">{sayNotWeighed(wrong)}</p>}
            <KeyPad value={draft.grams} onChange={set('grams')} isBusy={save.isBusy} />
            <div className={styles.acts}>
              <Button isBench onPress={onOther}>
                {words.other}
              </Button>
              <Button
                type="submit"
                isAct
                isBench
                isWide
                isBusy={save.isBusy || takeIn.isBusy}
                isDisabled={draft.grams === '' || waits > 0}
              >
                {words.done}
              </Button>
            </div>
          </Dock>
        </div>
      </Form>
      <Dialog
        isBench
        title={weighInWords.readingTitle}
        isOpen={doubt !== undefined}
        onClose={save.forget}
        closeWord={weighInWords.readingAgain}
      >
        {doubt && <p>{sayProblem(doubt).says}</p>}
        <Button isBench isWide isBusy={save.isBusy} onPress={() => void enter(true)}>
          {weighInWords.readingRight(typedDecimal(draft.grams) || '0')}
        </Button>
      </Dialog>
    </>
  );
}
