import type { steps } from '../../../contract/index.ts';
import { exact } from '../../../core/quantity/index.ts';
import { sayNumber, stepWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { AirSays } from './air-says.tsx';
import { CupPad } from './cup-pad.tsx';
import { finalCups, fullCupOf, judgeBowl } from './judge-bowl.ts';
import { densitiesOf } from './read-air.ts';
import { rememberCup } from './remembered-cup.ts';
import { StepForm } from './step-form.tsx';
import type { StepProps } from './step-props.ts';
import { StepWanted } from './step-wanted.tsx';
import { readWeighing } from './step-weighing.ts';
import { type StepEntry, useStepEntry } from './use-step-entry.ts';

/** A full cup: how dense, how much air, and what goes into each tin. */
export function StepCup(props: StepProps) {
  const { batch, screen, doneWord } = props;
  const entry = useStepEntry(props);
  const { draft, set, take } = entry;
  const weighed = readWeighing(draft, true);
  const cup = fullCupOf(weighed);
  const cups = [...finalCups(batch), ...(cup ? [cup] : [])];
  const last = finalCups(batch).at(-1);
  return (
    <>
      <StepWanted screen={screen} />
      {last && !cup && <LastCup cup={last} entry={entry} />}
      <StepForm
        label={screen.what}
        entry={entry}
        doneWord={doneWord}
        parts={() => {
          if (cup) rememberCup({ cupMl: draft.cupMl, tare: draft.tare });
          return { weighed };
        }}
      >
        <CupPad
          draft={draft}
          set={set}
          take={({ cupMl, tare }) => take({ cupMl, tare })}
          tins={screen.tins}
          isBusy={entry.save.isBusy}
          at="weighed"
        />
        {cup && <AirSays {...judgeBowl(batch, screen, { cups, before: null })} cup={sizeOf(cup)} />}
      </StepForm>
    </>
  );
}

/** The bowl was weighed as it was stopped: the same cup need not be weighed once more. */
function LastCup({ cup, entry }: { readonly cup: steps.FullCup; readonly entry: StepEntry }) {
  const density = sayNumber(densitiesOf([cup])[0]?.toNumber() ?? 0, 3);
  const { tinOf, ...weighed } = cup;
  return (
    <div>
      <Button isBench isBusy={entry.save.isBusy} onPress={() => void entry.enter({ weighed })}>
        {stepWords.cup.takeLast(tinOf, density)}
      </Button>
    </div>
  );
}

const sizeOf = ({ cupMl, tareGrams }: { readonly cupMl: string; readonly tareGrams: string }) => ({
  cupMl: exact(cupMl).toNumber(),
  tareGrams: exact(tareGrams).toNumber(),
});
