import { stepWords } from '../../../words/index.ts';
import { StepForm } from './step-form.tsx';
import type { StepProps } from './step-props.ts';
import { TimedStep } from './timed-step.tsx';
import { useStepEntry } from './use-step-entry.ts';

/** Whatever has no kind of its own: a tick, with time and temperature where the method gives them. */
export function StepOther(props: StepProps) {
  const { minutes, leastCelsius, mostCelsius, begun } = props.screen;
  if (minutes === null && leastCelsius === null && mostCelsius === null && begun.length === 0)
    return <Ticked {...props} />;
  return <TimedStep {...props} beginWord={stepWords.begin} heatWord={stepWords.cool.ask} />;
}

const Ticked = (props: StepProps) => (
  <StepForm label={props.screen.what} entry={useStepEntry(props)} doneWord={props.doneWord} />
);
