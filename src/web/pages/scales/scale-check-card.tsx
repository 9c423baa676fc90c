import { scaleWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { State } from '../../parts/state.tsx';
import type { Scale } from './scale.ts';
import { ScaleCheckForm } from './scale-check-form.tsx';
import { ScaleState } from './scale-state.tsx';

const { check: words } = scaleWords;

/** The daily check of a scale with its weight, before the first weighing: on its own page and at the bench. */
export function ScaleCheckCard({ scaleId }: { readonly scaleId: string }) {
  const workshop = useRead('getWorkshop').data;
  const scale = workshop?.scales.find(({ id }) => id === scaleId);
  if (!scale) return null;
  return (
    <Card title={words.title(scale.name)} anchor="check">
      <CheckInside scale={scale} />
    </Card>
  );
}

function CheckInside({ scale }: { readonly scale: Scale }) {
  const { check } = scale;
  if (!check)
    return (
      <>
        <p>{words.noWeight}</p>
        <div>
          <LinkButton isBench to="/workshop#scales">
            {words.toWeight}
          </LinkButton>
        </div>
      </>
    );
  const { limitGrams, limitBy } = check;
  if (limitGrams === null || limitBy === null) return <State kind="stop">{words.noLimit}</State>;
  const form = <ScaleCheckForm scale={scale} check={{ ...check, limitGrams, limitBy }} />;
  // Once it has passed today nothing is asked: a check more lies one tap away, for whoever doubts.
  if (check.isDue || check.isHeld) return form;
  return (
    <>
      <ScaleState scale={scale} />
      <Disclosure isBench title={words.onceMore}>
        {() => form}
      </Disclosure>
    </>
  );
}
