import { type ReactNode, useState } from 'react';
import { makingWords, stepWords } from '../../../words/index.ts';
import { workshopNow } from '../../away/clock.ts';
import { Button } from '../../parts/button.tsx';
import { Problems } from '../../parts/problems.tsx';
import { minutesSince, timerOf } from './list-timers.ts';
import { NumberPad, type PadField } from './number-pad.tsx';
import { StepForm } from './step-form.tsx';
import type { StepProps } from './step-props.ts';
import { HeatWanted, StepWanted } from './step-wanted.tsx';
import { StrikeStep } from './strike-step.tsx';
import { TimerFace } from './timer-face.tsx';
import { useBegin } from './use-begin.ts';
import { useNow } from './use-now.ts';
import { useStepEntry } from './use-step-entry.ts';

interface Props extends StepProps {
  readonly beginWord: string;
  /** What the temperature is asked by; none where none is wanted. */
  readonly heatWord?: string;
  readonly doneWord: string;
  /** While it runs, above its figures. */
  readonly children?: ReactNode;
}

const HEAT = { name: 'celsius', where: 'celsius', unit: '°C' } as const;
const TIME = { name: 'minutes', where: 'minutes', unit: 'min', label: stepWords.minutesTook } as const;

/** A step with a beginning and a time: begun by a tap, its time in large digits, ended by a tap. */
export function TimedStep({ beginWord, heatWord, children, ...props }: Props) {
  const { batch, screen, doneWord } = props;
  const entry = useStepEntry(props);
  const { begin, save } = useBegin(props);
  const [isUntimed, setUntimed] = useState(false);
  const now = useNow();
  const timer = timerOf(screen);
  const isWaiting = timer !== undefined && timer.endsAt !== null && now < timer.endsAt;
  const asksHeat = heatWord !== undefined && (screen.leastCelsius !== null || screen.mostCelsius !== null);
  const fields: PadField<'celsius' | 'minutes'>[] = [
    ...(asksHeat ? [{ ...HEAT, label: heatWord }] : []),
    ...(timer === undefined ? [TIME] : []),
  ];
  if (!timer && !isUntimed)
    return (
      <>
        <StepWanted screen={screen} />
        <Problems problems={save.problems} />
        <Button isAct isBench isWide isBusy={save.isBusy} onPress={() => void begin()}>
          {beginWord}
        </Button>
        <div>
          <Button isBench onPress={() => setUntimed(true)}>
            {stepWords.doneWithout}
          </Button>
        </div>
      </>
    );
  return (
    <>
      {timer && <TimerFace timer={timer} />}
      {!asksHeat && <StepWanted screen={screen} isTimed={timer === undefined} />}
      {children}
      <StepForm
        label={screen.what}
        entry={entry}
        doneWord={doneWord}
        isEarly={isWaiting}
        parts={() => (timer ? { minutes: minutesSince(timer.begunAt, workshopNow()) } : {})}
      >
        {fields.length > 0 && (
          <NumberPad
            fields={fields}
            values={entry.draft}
            set={entry.set}
            beside={asksHeat && <HeatWanted screen={screen} />}
            isBusy={entry.save.isBusy}
          />
        )}
      </StepForm>
      {timer && (
        <StrikeStep
          batch={batch}
          entryId={timer.key}
          word={stepWords.begunWrongly}
          title={stepWords.strikeBegun}
        />
      )}
      {!timer && (
        <div>
          <Button isBench onPress={() => setUntimed(false)}>
            {makingWords.back}
          </Button>
        </div>
      )}
    </>
  );
}
