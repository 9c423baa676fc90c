import { scaleWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { State } from '../../parts/state.tsx';
import type { Scale } from './scale.ts';
import { ScaleCheckForm } from './scale-check-form.tsx';

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
  if (check.limitGrams === null || check.limitBy === null) return <State kind="stop">{words.noLimit}</State>;
  return (
    <ScaleCheckForm
      scale={scale}
      check={{ ...check, limitGrams: check.limitGrams, limitBy: check.limitBy }}
    />
  );
}
