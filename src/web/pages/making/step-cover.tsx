import { stepWords } from '../../../words/index.ts';
import { StepForm } from './step-form.tsx';
import type { StepProps } from './step-props.ts';
import { TimedStep } from './timed-step.tsx';
import { useStepEntry } from './use-step-entry.ts';

/** Covered is a tap; where the method gives a time or a temperature, that is kept too. */
export function StepCover(props: StepProps) {
  const { screen } = props;
  const isPlain = screen.minutes === null && screen.leastCelsius === null && screen.mostCelsius === null;
  if (isPlain && screen.begun.length === 0) return <Covered {...props} />;
  return <TimedStep {...props} beginWord={stepWords.cover.begin} heatWord={stepWords.cool.ask} />;
}

const Covered = (props: StepProps) => (
  <StepForm label={props.screen.what} entry={useStepEntry(props)} doneWord={props.doneWord} />
);
