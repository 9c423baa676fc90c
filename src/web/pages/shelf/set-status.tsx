import { useState } from 'react';
import { partWords, shelfWords, termWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import type { Lot } from './shelf-item.ts';

type Status = Lot['status'];

interface Props {
  readonly lot: Lot;
  /** What is chosen to begin with. */
  readonly first?: Status;
  readonly onClose: () => void;
}

const { lot: words } = shelfWords;
const STATUSES = Object.keys(termWords.lotStatus) as Status[];

/** A base is released by the word that it is firm, tins by their filling run, and what was rejected is looked at anew. */
const mayStand = (lot: Lot, status: Status): boolean =>
  status !== lot.status &&
  (lot.status !== 'rejected' || status === 'quarantine') &&
  (status !== 'released' || lot.itemKind === 'material' || lot.status === 'blocked');

export function SetStatus({ lot, first, onClose }: Props) {
  const others = STATUSES.filter((status) => mayStand(lot, status));
  const [status, setStatus] = useState<Status>(first ?? others[0] ?? lot.status);
  const [reason, setReason] = useState('');
  const save = useWrite('setLotStatus');
  const submit = async () => {
    if (!(await save.write({ params: { id: lot.id }, body: { status, reason } }))) return;
    tell(words.statusNow);
    onClose();
  };
  return (
    <Dialog title={words.status} isOpen onClose={onClose}>
      <Form label={words.status} problems={save.problems} onSubmit={() => void submit()}>
        <RadioChoice
          title={words.whichStanding}
          choices={others.map((id) => ({ id, name: termWords.lotStatus[id] }))}
          value={status}
          onChange={(id) => setStatus(id as Status)}
        />
        <Field
          label={words.reason}
          where="reason"
          value={reason}
          onChange={setReason}
          hint={words.statusHint}
        />
        <Button type="submit" isAct isBusy={save.isBusy}>
          {partWords.save}
        </Button>
      </Form>
    </Dialog>
  );
}
