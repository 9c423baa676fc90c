import { stepWords } from '../../../words/index.ts';
import { workshopNow } from '../../away/clock.ts';
import { Button } from '../../parts/button.tsx';
import { Problems } from '../../parts/problems.tsx';
import { minutesSince, timerOf } from './list-timers.ts';
import { StepForm } from './step-form.tsx';
import type { StepProps } from './step-props.ts';
import { StepWanted } from './step-wanted.tsx';
import { StrikeStep } from './strike-step.tsx';
import { TimerFace } from './timer-face.tsx';
import { useBegin } from './use-begin.ts';
import { useStepEntry } from './use-step-entry.ts';

const { set: words } = stepWords;

/** Sets in a range of hours that nobody knows exactly: a person says that it is firm, here or, of a base, on its lot. */
export function StepSet(props: StepProps) {
  const { batch, screen, doneWord } = props;
  const entry = useStepEntry(props);
  const { begin, save } = useBegin(props);
  const timer = timerOf(screen);
  const range =
    screen.leastHours === null || screen.mostHours === null
      ? words.noRange
      : words.hours(screen.leastHours, screen.mostHours);
  if (screen.isHandedOn)
    return (
      <>
        <StepWanted screen={screen} />
        <p>
          {range} {words.handOnSays}
        </p>
        <StepForm label={screen.what} entry={entry} doneWord={words.handOn} />
      </>
    );
  if (!timer)
    return (
      <>
        <StepWanted screen={screen} />
        <p>{range}</p>
        <Problems problems={save.problems} />
        <Button isAct isBench isWide isBusy={save.isBusy} onPress={() => void begin()}>
          {words.begin}
        </Button>
        <StepForm label={screen.what} entry={entry} doneWord={words.firmUntimed} isEarly />
      </>
    );
  return (
    <>
      <TimerFace timer={timer} />
      <p>{words.feel}</p>
      <StepForm
        label={screen.what}
        entry={entry}
        doneWord={`${words.firm}. ${doneWord}`}
        isEarly={timer.endsAt !== null && workshopNow() < timer.endsAt}
        parts={() => ({ minutes: minutesSince(timer.begunAt, workshopNow()) })}
      />
      <StrikeStep
        batch={batch}
        entryId={timer.key}
        word={stepWords.begunWrongly}
        title={stepWords.strikeBegun}
      />
    </>
  );
}
