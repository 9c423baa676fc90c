import { shelfWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { DateField } from '../../parts/date-field.tsx';
import { Field } from '../../parts/field.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { PlaceChoice } from './place-choice.tsx';

/** What the paper of a lot says; everything may be unknown. */
export interface LotFacts {
  readonly supplierLot: string;
  readonly bestBefore: string;
  readonly paid: string;
  readonly placeId: string;
}

interface Props {
  readonly draft: LotFacts;
  readonly set: (key: keyof LotFacts) => (value: string) => void;
}

const { goods: words } = shelfWords;

export function LotFactsFields({ draft, set }: Props) {
  const workshop = useRead('getWorkshop').data;
  const places = (workshop?.places ?? []).filter(({ kind }) => kind !== 'retained');
  return (
    <>
      <SideBySide>
        <Field
          label={words.supplierLot}
          where="supplierLot"
          value={draft.supplierLot}
          onChange={set('supplierLot')}
          hint={words.supplierLotHint}
          isOptional
        />
        <DateField
          label={words.bestBefore}
          where="bestBefore"
          value={draft.bestBefore}
          onChange={set('bestBefore')}
          hint={words.bestBeforeHint}
          isOptional
        />
      </SideBySide>
      <SideBySide>
        <Field
          label={words.paid}
          where="paid"
          kind="decimal"
          unit={workshop?.details?.currency}
          value={draft.paid}
          onChange={set('paid')}
          isOptional
        />
        {places.length > 1 && (
          <PlaceChoice
            label={words.place}
            where="placeId"
            value={draft.placeId}
            onChange={set('placeId')}
            none={places[0]?.name ?? ''}
          />
        )}
      </SideBySide>
    </>
  );
}
