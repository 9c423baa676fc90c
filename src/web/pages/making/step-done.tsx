import { exact, toText } from '../../../core/quantity/index.ts';
import { makingWords, sayGrams } from '../../../words/index.ts';
import { Moment } from '../../parts/moment.tsx';
import type { Step } from './batch.ts';
import { CupSays } from './cup-says.tsx';
import { cupSoFar } from './step-weighing.ts';

type Done = NonNullable<Step['done']>;

/** What was entered of a step, or that nothing was. */
export function sayEntered({ celsius, minutes, remark, weighed }: Done): string {
  const entered = [
    celsius && `${celsius} °C`,
    minutes && makingWords.wantedMinutes(minutes),
    weighed && sayGrams(toText(exact(weighed.grossGrams).minus(weighed.tareGrams))),
    remark,
  ].filter(Boolean);
  return entered.length === 0 ? makingWords.nothingEntered : entered.join(' · ');
}

export function StepDone({ screen, done }: { readonly screen: Step; readonly done: Done }) {
  const cup = cupSoFar(done.weighed);
  return (
    <>
      <p>
        {makingWords.stepDone(done.by)}, <Moment at={done.at} /> · {sayEntered(done)}
      </p>
      {cup && <CupSays cup={cup} tins={screen.tins} />}
    </>
  );
}
