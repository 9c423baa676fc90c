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

interface Props {
  readonly lot: Lot;
  readonly onClose: () => void;
}

const { lot: words } = shelfWords;
type Status = Lot['status'];
const STATUSES = Object.keys(termWords.lotStatus) as Status[];

export function SetStatus({ lot, onClose }: Props) {
  const others = STATUSES.filter((status) => status !== lot.status);
  const [status, setStatus] = useState<Status>(others[0] ?? lot.status);
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
