import { useState } from 'react';
import { sayGrams, weighInWords as words } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { Select } from '../../parts/select.tsx';
import type { Addition, Batch } from './batch.ts';
import type { WeighIn } from './use-weigh-in.ts';

const NONE = [] as const;

interface Props {
  readonly batch: Batch;
  readonly screen: Addition;
  readonly weigh: WeighIn;
  readonly onClose: () => void;
}

/** Another material instead: in a trial, with why; for sale the way is a revision that has it. */
export function SubstituteForm(props: Props) {
  if (props.batch.purpose === 'trial') return <TrialSubstitute {...props} />;
  return (
    <>
      <p>{words.substituteSale}</p>
      <LinkButton isBench isWide to={`/formulas/${props.batch.formulaId}`}>
        {words.substituteRevision}
      </LinkButton>
    </>
  );
}

function TrialSubstitute({ screen, weigh, onClose }: Props) {
  const [lotId, setLotId] = useState('');
  const [why, setWhy] = useState('');
  const lots = (useRead('findLots').data ?? []).filter(
    (lot) =>
      lot.unit === 'g' &&
      lot.status === 'released' &&
      lot.onHand !== '0' &&
      lot.itemKind === 'material' &&
      lot.itemId !== screen.itemId,
  );
  const chosen = lots.find((lot) => lot.id === lotId);
  const isComplete = chosen !== undefined && why.trim() !== '' && weigh.net !== '';
  async function submit(): Promise<void> {
    if (!chosen || !isComplete) return;
    const instead = { what: words.substituteWhatSaid(chosen.itemName, screen.itemName), why };
    // What is asked about it is asked, and answered, where every weighing is.
    await weigh.send(weigh.saidNow({ lotId: chosen.id, instead }));
    onClose();
  }
  return (
    <Form label={words.substituteTitle(screen.itemName)} problems={NONE} onSubmit={() => void submit()}>
      {weigh.net === '' ? <p>{words.typeFirst}</p> : <p>{sayGrams(weigh.net)}</p>}
      <Select
        label={words.substituteWhat}
        where="lotId"
        value={lotId}
        onChange={setLotId}
        choices={lots.map((lot) => ({
          id: lot.id,
          name: `${lot.itemName}, ${lot.number}, ${sayGrams(lot.onHand)}`,
        }))}
        isBench
      />
      <Field label={words.substituteWhy} where="deviation.why" value={why} onChange={setWhy} isBench />
      <Button type="submit" isAct isBench isWide isBusy={weigh.save.isBusy} isDisabled={!isComplete}>
        {words.substituteTap}
      </Button>
    </Form>
  );
}
