import { problem } from '../../../core/problem.ts';
import { readDecimal, sumOf, toText } from '../../../core/quantity/index.ts';
import { awayWords, makingWords, sayGrams, stepWords } from '../../../words/index.ts';
import { useKeptDraft } from '../../api/use-kept-draft.ts';
import { useWrite } from '../../api/use-write.ts';
import { useWaiting } from '../../away/use-kept.ts';
import { Button } from '../../parts/button.tsx';
import { Form } from '../../parts/form.tsx';
import { State } from '../../parts/state.tsx';
import { typedDecimal } from '../../show/typed-decimal.ts';
import type { Batch } from './batch.ts';
import { NumberPad } from './number-pad.tsx';

const FIELDS = [
  { name: 'gross', label: makingWords.gross, where: 'yieldGrams', unit: 'g' },
  { name: 'tare', label: makingWords.tare, where: 'tareGrams', unit: 'g', hint: stepWords.weigh.tareHint },
] as const;

/** Gross less tare, exact; what cannot be read goes on as typed and is named. */
function netText(gross: string, tare: string): string {
  const [whole, empty] = [readDecimal(gross, 'gross'), readDecimal(tare === '' ? '0' : tare, 'tare')];
  return whole.ok && empty.ok ? toText(whole.value.minus(empty.value)) : typedDecimal(gross);
}

/** Everything is in: what came out is weighed and becomes a lot. */
export function FinishScreen({ batch }: { readonly batch: Batch }) {
  const { draft, set, forget } = useKeptDraft(`bench.${batch.id}.yield`, { gross: '', tare: '' });
  const finish = useWrite('finishBatch');
  const onTablet = useWaiting(batch.id).length;
  const net = netText(draft.gross, draft.tare);
  const wentIn = sumOf(
    batch.screens.flatMap((screen) =>
      screen.kind === 'addition' && screen.done ? [screen.done.actualGrams] : [],
    ),
  );
  const isAsked = finish.problems.some(({ code }) => code === 'yield-half-gone');
  async function submit(isYieldSure = false) {
    if (net.startsWith('-') || net === '0') {
      const figures = { found: typedDecimal(draft.tare), allowed: typedDecimal(draft.gross) };
      return finish.refuse([problem('weighed-nothing', 'tareGrams', figures)]);
    }
    if (await finish.write({ params: { id: batch.id }, body: { yieldGrams: net, isYieldSure } })) forget();
  }
  return (
    <Form label={makingWords.allDone} problems={finish.problems} onSubmit={() => void submit()}>
      <p className="soft">
        {makingWords.wentIn(sayGrams(toText(wentIn)))} {makingWords.allDoneSoft}
      </p>
      <NumberPad fields={FIELDS} values={draft} set={set} isBusy={finish.isBusy} isFirst />
      {draft.gross !== '' && <p aria-live="polite">{makingWords.net(sayGrams(net))}</p>}
      {onTablet > 0 && <State kind="watch">{awayWords.finishWaits(onTablet)}</State>}
      {isAsked && (
        <Button isBench isWide isBusy={finish.isBusy} onPress={() => void submit(true)}>
          {makingWords.yieldSure(sayGrams(net))}
        </Button>
      )}
      <Button
        type="submit"
        isAct
        isBench
        isWide
        isBusy={finish.isBusy}
        isDisabled={draft.gross === '' || onTablet > 0}
      >
        {makingWords.finish}
      </Button>
    </Form>
  );
}
