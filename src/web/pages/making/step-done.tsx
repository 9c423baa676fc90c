import { exact, toText } from '../../../core/quantity/index.ts';
import { makingWords, sayGrams, stepWords } from '../../../words/index.ts';
import { Moment } from '../../parts/moment.tsx';
import { AirSays } from './air-says.tsx';
import type { Batch, Step } from './batch.ts';
import { finalCups, fullCupOf, judgeBowl } from './judge-bowl.ts';
import { StrikeStep } from './strike-step.tsx';
import { WhipRounds } from './whip-rounds.tsx';

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

interface Props {
  readonly batch: Batch;
  readonly screen: Step;
  readonly done: Done;
}

/** A step as it was entered, with its rounds and what its cup says; struck here where it is wrong. */
export function StepDone({ batch, screen, done }: Props) {
  const cup = fullCupOf(done.weighed);
  const cups = screen.stepKind === 'whip' ? finalCups(batch) : cup ? [cup] : [];
  const begun = screen.begun[0];
  return (
    <>
      {begun && (
        <p className="soft">
          {stepWords.begunBy(begun.by)}, <Moment at={begun.at} />
        </p>
      )}
      <p>
        {makingWords.stepDone(done.by)}, <Moment at={done.at} /> · {sayEntered(done)}
      </p>
      {cups.length > 0 && <AirSays {...judgeBowl(batch, screen, { cups, before: null })} cup={undefined} />}
      <WhipRounds batch={batch} screen={screen} />
      {batch.state === 'making' && (
        <StrikeStep
          batch={batch}
          entryId={done.entryId}
          word={makingWords.strike}
          title={stepWords.strikeDone}
        />
      )}
    </>
  );
}
