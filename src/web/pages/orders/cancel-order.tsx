import { useState } from 'react';
import { orderWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import type { Order } from './order.ts';

const { one: words } = orderWords;

/** Stands at the foot of its order, apart from what sends it. */
export function CancelOrder({ order }: { readonly order: Order }) {
  const [isOpen, setOpen] = useState(false);
  const [reason, setReason] = useState('');
  const cancel = useWrite('cancelOrder');
  const close = () => {
    cancel.forget();
    setOpen(false);
  };
  const submit = async () => {
    const { id, version } = order;
    if (!(await cancel.write({ params: { id }, body: { version, reason } }))) return;
    tell(words.cancelledNow);
    close();
  };
  return (
    <Card>
      <ListFoot>
        <span className="soft">{words.cancelApart}</span>
        <Button isStop onPress={() => setOpen(true)}>
          {words.cancel}
        </Button>
      </ListFoot>
      <Dialog title={words.cancelTitle(order.number)} isOpen={isOpen} onClose={close}>
        <p>{words.cancelSays}</p>
        <Form
          label={words.cancelTitle(order.number)}
          problems={cancel.problems}
          onSubmit={() => void submit()}
        >
          <Field label={words.reason} where="reason" value={reason} onChange={setReason} />
          <Button type="submit" isStop isBusy={cancel.isBusy}>
            {words.cancel}
          </Button>
        </Form>
      </Dialog>
    </Card>
  );
}
