import { useMemo, useState } from 'react';
import { exact, toText } from '../../../core/quantity/index.ts';
import { fillingWords, sayDecimal, sayGrams } from '../../../words/index.ts';
import { useKeptDraft } from '../../api/use-kept-draft.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { KeyPad } from '../../parts/key-pad.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { State } from '../../parts/state.tsx';
import { typedDecimal, typedDecimalOrNull } from '../../show/typed-decimal.ts';
import bench from '../making/bench.module.css';
import { Dock } from '../making/dock.tsx';
import { sayNotWeighed } from '../making/say-not-weighed.ts';
import { ScaleField } from '../making/scale-field.tsx';
import { whyNotWeighed } from '../making/weight-verdict.ts';
import { FAR_ABOVE, FarAboveQuestion } from './far-above-question.tsx';
import styles from './run.module.css';
import type { Run } from './run.ts';
import { sayFill } from './say-fill.ts';
import { TakeOut } from './take-out.tsx';

const KINDS = { inside: 'ready', 'too-light': 'stop', heavy: 'watch' } as const;

/** One tin after another: what to aim at in large digits, the last verdict, and keys. */
export function FillPad({ run }: { readonly run: Run }) {
  const { draft, set, forget } = useKeptDraft(`filling.${run.id}`, { gross: '', tare: '' });
  const { gross, tare } = draft;
  const record = useWrite('recordFill');
  const last = run.weights.filter((weight) => !weight.isStruck).at(-1);
  const wrong = gross.trim() === '' ? undefined : whyNotWeighed(gross, fillingWords.gross);
  const aim = toText(exact(run.aimGrams).plus(run.tareGrams ?? 0));
  // What is asked stands in its question: another list would judge the form anew at each key.
  const told = useMemo(() => record.problems.filter(({ code }) => code !== FAR_ABOVE), [record.problems]);
  /** What is asked about is what is kept, whatever the fields say by then. */
  const [asked, setAsked] = useState(draft);
  async function send(tin: typeof draft, isContentSure: boolean) {
    const kept = await record.write({
      params: { id: run.id },
      body: {
        grossGrams: typedDecimal(tin.gross),
        tareGrams: typedDecimalOrNull(tin.tare),
        refillOf: null,
        sure: isContentSure ? [FAR_ABOVE] : [],
      },
    });
    if (kept) forget();
  }
  function enter() {
    if (gross === '' || wrong) return;
    setAsked(draft);
    void send(draft, false);
  }
  return (
    <>
      <Form isSaidWithin label={fillingWords.enter} problems={told} onSubmit={enter}>
        <Dock>
          <div className={bench.figures}>
            <div>
              <p className="soft">{run.tareGrams === null ? fillingWords.aimNet : fillingWords.aim}</p>
              <p className={bench.digits}>
                {sayDecimal(aim)}
                <small>g</small>
              </p>
            </div>
            <ScaleField
              label={fillingWords.gross}
              where="grossGrams"
              value={gross}
              onChange={set('gross')}
              isBusy={record.isBusy}
            />
          </div>
          <div className={styles.last}>
            <p aria-live="polite">
              {wrong && <State kind="stop">{sayNotWeighed(wrong)}</State>}
              {!wrong && last && (
                <State kind={KINDS[last.verdict]}>
                  {fillingWords.tinNumber(last.number)}: {sayGrams(last.netGrams)}, {sayFill(last)}
                </State>
              )}
            </p>
            {last?.verdict === 'too-light' && <TakeOut isBench run={run} weight={last} />}
          </div>
          {run.tareGrams === null && (
            <SideBySide>
              <Field
                label={fillingWords.ownTare}
                where="tareGrams"
                kind="decimal"
                unit="g"
                value={tare}
                onChange={set('tare')}
                isBench
              />
            </SideBySide>
          )}
          <KeyPad value={gross} onChange={set('gross')} isBusy={record.isBusy} />
          <Button type="submit" isAct isBench isWide isBusy={record.isBusy} isDisabled={gross === ''}>
            {fillingWords.enter}
          </Button>
        </Dock>
      </Form>
      <FarAboveQuestion
        problems={record.problems}
        onSure={() => void send(asked, true)}
        onClose={record.forget}
      />
    </>
  );
}
