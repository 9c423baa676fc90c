import { stepWords } from '../../../words/index.ts';
import type { StepProps } from './step-props.ts';
import { TimedStep } from './timed-step.tsx';

/** Cooled to a temperature: the thermometer ends it, the time says when to look. */
export const StepCool = (props: StepProps) => (
  <TimedStep {...props} beginWord={stepWords.cool.begin} heatWord={stepWords.cool.ask} />
);
