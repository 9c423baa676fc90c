import { stepWords } from '../../../words/index.ts';
import type { StepProps } from './step-props.ts';
import { TimedStep } from './timed-step.tsx';

/** Held warm for a time; the next thing may be weighed meanwhile. */
export const StepHold = (props: StepProps) => (
  <TimedStep {...props} beginWord={stepWords.hold.begin} heatWord={stepWords.hold.ask} />
);
