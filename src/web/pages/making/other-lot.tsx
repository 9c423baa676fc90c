import { makingWords, weighInWords } from '../../../words/index.ts';
import { Disclosure } from '../../parts/disclosure.tsx';
import { Select } from '../../parts/select.tsx';
import { showAmount } from '../../show/show-amount.ts';
import type { Addition } from './batch.ts';
import { useLotsOf } from './use-lots-of.ts';

interface Props {
  readonly screen: Addition;
  readonly lotId: string | null;
  readonly onChange: (lotId: string) => void;
}

/** The planned lot ran out, or another tub stood nearer: allowed, with what and why. */
export const OtherLot = (props: Props) => (
  <Disclosure isBench title={makingWords.otherLot}>
    {() => <LotSelect {...props} />}
  </Disclosure>
);

function LotSelect({ screen, lotId, onChange }: Props) {
  const known = useLotsOf(screen.itemId, screen.itemName);
  if (!known) return <p>{weighInWords.lotsNotKnown}</p>;
  const lots = known.filter((lot) => lot.onHand !== '0');
  return (
    <Select
      label={makingWords.lot}
      where="lotId"
      value={lotId ?? ''}
      onChange={onChange}
      choices={lots.map((lot) => ({
        id: lot.id,
        name: `${lot.number}, ${showAmount(lot.onHand, lot.unit)}`,
      }))}
      hint={makingWords.otherLotHint}
      isBench
    />
  );
}
