import { useState } from 'react';
import { exact, toText } from '../../../core/quantity/index.ts';
import { fillingWords } from '../../../words/index.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { KeyPad } from '../../parts/key-pad.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { State } from '../../parts/state.tsx';
import { typedDecimal, typedDecimalOrNull } from '../../show/typed-decimal.ts';
import bench from '../making/bench.module.css';
import type { Run } from './run-page.tsx';

const KINDS = { inside: 'ready', 'too-light': 'stop', heavy: 'watch' } as const;

/** One tin after another: what to aim at in large digits, the last verdict, and keys. */
export function FillPad({ run }: { readonly run: Run }) {
  const [gross, setGross] = useState('');
  const [tare, setTare] = useState('');
  const record = useWrite('recordFill');
  const last = run.weights.filter((weight) => !weight.isStruck).at(-1);
  const aim = toText(exact(run.aimGrams).plus(run.tareGrams ?? 0));
  async function enter() {
    if (gross === '') return;
    const kept = await record.write({
      params: { id: run.id },
      body: { grossGrams: typedDecimal(gross), tareGrams: typedDecimalOrNull(tare) },
    });
    if (!kept) return;
    setGross('');
    setTare('');
  }
  return (
    <Form label={fillingWords.enter} problems={record.problems} onSubmit={() => void enter()}>
      <div className={bench.figures}>
        <div>
          <p className="soft">{run.tareGrams === null ? fillingWords.aimNet : fillingWords.aim}</p>
          <p className={bench.digits}>
            {aim}
            <small>g</small>
          </p>
        </div>
        <label>
          <span className="soft">{fillingWords.gross}</span>
          <span className={bench.digits}>
            <input
              inputMode="decimal"
              autoComplete="off"
              value={gross}
              onChange={(event) => setGross(event.target.value)}
            />
          </span>
        </label>
      </div>
      <p aria-live="polite">
        {last && (
          <State kind={KINDS[last.verdict]}>
            {fillingWords.tinNumber(last.number)}: {last.netGrams} g, {fillingWords.verdicts[last.verdict]}
          </State>
        )}
      </p>
      {run.tareGrams === null && (
        <SideBySide>
          <Field
            label={fillingWords.ownTare}
            where="tareGrams"
            kind="decimal"
            unit="g"
            value={tare}
            onChange={setTare}
            isBench
          />
        </SideBySide>
      )}
      <KeyPad value={gross} onChange={setGross} />
      <Button type="submit" isAct isBench isWide isBusy={record.isBusy} isDisabled={gross === ''}>
        {fillingWords.enter}
      </Button>
    </Form>
  );
}
