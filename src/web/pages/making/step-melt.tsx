import { stepWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Problems } from '../../parts/problems.tsx';
import { runningBegun } from './list-timers.ts';
import type { StepProps } from './step-props.ts';
import { TimedStep } from './timed-step.tsx';
import { useBegin } from './use-begin.ts';

const { melt: words } = stepWords;

/** Heated for as long as it takes, then held: two beginnings, and the hold is what is timed. */
export function StepMelt(props: StepProps) {
  const { screen } = props;
  const hold = useBegin(props);
  const isHeating = runningBegun(screen)?.round === 1;
  const { minutes } = screen;
  return (
    <TimedStep {...props} beginWord={words.begin} heatWord={isHeating ? words.reached : words.ask}>
      {isHeating && minutes !== null && (
        <>
          <Problems problems={hold.save.problems} />
          <p>{words.holds(minutes)}</p>
          <Button
            isAct
            isBench
            isWide
            isBusy={hold.save.isBusy}
            onPress={() => void hold.begin({ round: 2 })}
          >
            {words.beginHold(minutes)}
          </Button>
        </>
      )}
    </TimedStep>
  );
}
