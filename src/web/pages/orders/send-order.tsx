import { useState } from 'react';
import { orderWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import type { Order } from './order.ts';

const { one: words } = orderWords;

interface Props {
  readonly order: Order;
  readonly isOpen: boolean;
  readonly onClose: () => void;
}

export function SendOrder({ order, isOpen, onClose }: Props) {
  const [tracking, setTracking] = useState('');
  const send = useWrite('dispatchOrder');
  const close = () => {
    send.forget();
    onClose();
  };
  const submit = async () => {
    if (!(await send.write({ params: { id: order.id }, body: { tracking } }))) return;
    tell(words.sentNow);
    close();
  };
  return (
    <Dialog title={words.sendTitle(order.number)} isOpen={isOpen} onClose={close}>
      <p>{words.sendSays}</p>
      {order.labelNotes.map((note) => (
        <p key={JSON.stringify(note.parameters)}>
          <Sentence saying={note} />
        </p>
      ))}
      <Form label={words.sendTitle(order.number)} problems={send.problems} onSubmit={() => void submit()}>
        <Field label={words.tracking} where="tracking" value={tracking} onChange={setTracking} isOptional />
        <Button type="submit" isAct isBench isBusy={send.isBusy}>
          {words.send}
        </Button>
      </Form>
    </Dialog>
  );
}
