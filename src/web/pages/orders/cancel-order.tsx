import { useState } from 'react';
import { orderWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import type { Order } from './order.ts';

const { one: words } = orderWords;

interface Props {
  readonly order: Order;
  readonly isOpen: boolean;
  readonly onClose: () => void;
}

export function CancelOrder({ order, isOpen, onClose }: Props) {
  const [reason, setReason] = useState('');
  const cancel = useWrite('cancelOrder');
  const close = () => {
    cancel.forget();
    onClose();
  };
  const submit = async () => {
    const { id, version } = order;
    if (!(await cancel.write({ params: { id }, body: { version, reason } }))) return;
    tell(words.cancelledNow);
    close();
  };
  return (
    <Dialog title={words.cancelTitle(order.number)} isOpen={isOpen} onClose={close}>
      <p>{words.cancelSays}</p>
      <Form label={words.cancelTitle(order.number)} problems={cancel.problems} onSubmit={() => void submit()}>
        <Field label={words.reason} where="reason" value={reason} onChange={setReason} />
        <Button type="submit" isStop isBusy={cancel.isBusy}>
          {words.cancel}
        </Button>
      </Form>
    </Dialog>
  );
}
