import { exact } from '../../../core/quantity/index.ts';
import { AirSays } from './air-says.tsx';
import { CupPad } from './cup-pad.tsx';
import { finalCups, fullCupOf, judgeBowl } from './judge-bowl.ts';
import { rememberCup } from './remembered-cup.ts';
import { StepForm } from './step-form.tsx';
import type { StepProps } from './step-props.ts';
import { StepWanted } from './step-wanted.tsx';
import { readWeighing } from './step-weighing.ts';
import { useStepEntry } from './use-step-entry.ts';

/** A full cup: how dense, how much air, and what goes into each tin. */
export function StepCup(props: StepProps) {
  const { batch, screen, doneWord } = props;
  const entry = useStepEntry(props);
  const { draft, set, take } = entry;
  const weighed = readWeighing(draft, true);
  const cup = fullCupOf(weighed);
  const cups = [...finalCups(batch), ...(cup ? [cup] : [])];
  return (
    <>
      <StepWanted screen={screen} />
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

const sizeOf = ({ cupMl, tareGrams }: { readonly cupMl: string; readonly tareGrams: string }) => ({
  cupMl: exact(cupMl).toNumber(),
  tareGrams: exact(tareGrams).toNumber(),
});
