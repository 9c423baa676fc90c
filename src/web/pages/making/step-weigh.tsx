import { exact, readDecimal, toText } from '../../../core/quantity/index.ts';
import { sayGrams, sayNumber, stepWords } from '../../../words/index.ts';
import { State } from '../../parts/state.tsx';
import { NumberPad } from './number-pad.tsx';
import { StepForm } from './step-form.tsx';
import type { StepProps } from './step-props.ts';
import { StepWanted } from './step-wanted.tsx';
import { readWeighing } from './step-weighing.ts';
import { bowlBefore, useStepEntry } from './use-step-entry.ts';

const { weigh: words } = stepWords;
const FIELDS = [
  { name: 'gross', label: words.gross, where: 'weighed.grossGrams', unit: 'g' },
  { name: 'tare', label: words.tare, where: 'weighed.tareGrams', unit: 'g', hint: words.tareHint },
] as const;

/** What there is now, beside what should be there: the difference is what the stage left behind. */
export function StepWeigh(props: StepProps) {
  const { batch, screen, doneWord } = props;
  const entry = useStepEntry(props);
  const expected = bowlBefore(batch, screen);
  return (
    <>
      <StepWanted screen={screen} />
      {expected.gt(0) && <p>{words.expected(sayGrams(toText(expected)))}</p>}
      <StepForm
        label={screen.what}
        entry={entry}
        doneWord={doneWord}
        parts={() => ({ weighed: readWeighing(entry.draft, false) })}
      >
        <NumberPad fields={FIELDS} values={entry.draft} set={entry.set} isBusy={entry.save.isBusy} />
        <Left gross={entry.draft.gross} tare={entry.draft.tare} expected={expected} />
      </StepForm>
    </>
  );
}

interface LeftProps {
  readonly gross: string;
  readonly tare: string;
  readonly expected: ReturnType<typeof exact>;
}

function Left({ gross, tare, expected }: LeftProps) {
  const [whole, empty] = [readDecimal(gross, 'gross'), readDecimal(tare === '' ? '0' : tare, 'tare')];
  if (!whole.ok || !empty.ok) return <p aria-live="polite" />;
  const net = whole.value.minus(empty.value);
  const loss = expected.minus(net);
  const percent = expected.gt(0) ? sayNumber(exact(loss).times(100).div(expected).toNumber(), 1) : '0';
  return (
    <p aria-live="polite">
      <strong>{words.net(sayGrams(toText(net)))}.</strong>{' '}
      {expected.gt(0) &&
        (loss.lt(0) ? (
          <State kind="watch">{words.gain(sayGrams(toText(loss.neg())))}</State>
        ) : (
          words.loss(sayGrams(toText(loss)), percent)
        ))}
    </p>
  );
}
