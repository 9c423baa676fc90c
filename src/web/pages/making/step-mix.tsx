import { stepWords } from '../../../words/index.ts';
import { StepForm } from './step-form.tsx';
import type { StepProps } from './step-props.ts';
import { TimedStep } from './timed-step.tsx';
import { useStepEntry } from './use-step-entry.ts';

const isPlain = ({ screen }: StepProps): boolean =>
  screen.minutes === null &&
  screen.leastCelsius === null &&
  screen.mostCelsius === null &&
  screen.begun.length === 0;

/** Mixed until it is smooth: looking ends it, the time says how long that usually takes. */
export const StepMix = (props: StepProps) =>
  isPlain(props) ? (
    <Ticked {...props} />
  ) : (
    <TimedStep {...props} beginWord={stepWords.mix.begin} heatWord={stepWords.cool.ask} />
  );

const Ticked = (props: StepProps) => (
  <>
    <p>{stepWords.mix.smooth}</p>
    <StepForm label={props.screen.what} entry={useStepEntry(props)} doneWord={props.doneWord} />
  </>
);
