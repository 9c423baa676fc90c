import { useState } from 'react';
import { orderWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { PrintLink } from '../../parts/print-link.tsx';
import { Problems } from '../../parts/problems.tsx';
import { CancelOrder } from './cancel-order.tsx';
import { countUnits } from './count-units.ts';
import type { Order } from './order.ts';
import { SendOrder } from './send-order.tsx';

const { one: words } = orderWords;

/** The means to act on an order: what cannot be done any more is not offered. */
export function OrderActions({ order }: { readonly order: Order }) {
  const [asked, setAsked] = useState<'send' | 'cancel' | null>(null);
  const keep = useWrite('reserveOrder');
  const address = { params: { id: order.id } };
  const units = countUnits(order);
  const isOpen = order.state === 'open' || order.state === 'part-sent';
  /** Nothing has to happen before it can go. */
  const isAllHere = order.promise.answer === 'yes' && order.promise.steps.length === 0;
  const keepTins = async () => {
    if (await keep.write({ ...address, body: {} })) tell(words.keptNow);
  };
  return (
    <>
      {isOpen && (
        <>
          <Button isAct={isAllHere} onPress={() => setAsked('send')}>
            {words.send}
          </Button>
          {units.kept + units.sent < units.ordered && (
            <Button onPress={() => void keepTins()} isBusy={keep.isBusy}>
              {words.keep}
            </Button>
          )}
          <PrintLink paper="getPickList" address={address}>
            {words.pick}
          </PrintLink>
        </>
      )}
      {(order.state === 'sent' || order.state === 'part-sent') && (
        <PrintLink paper="getPackingSlip" address={address}>
          {words.slip}
        </PrintLink>
      )}
      {order.state === 'open' && (
        <>
          <LinkButton to={`/orders/${order.id}/change`}>{words.change}</LinkButton>
          <Button isStop onPress={() => setAsked('cancel')}>
            {words.cancel}
          </Button>
        </>
      )}
      <Problems problems={keep.problems} />
      <SendOrder order={order} isOpen={asked === 'send'} onClose={() => setAsked(null)} />
      <CancelOrder order={order} isOpen={asked === 'cancel'} onClose={() => setAsked(null)} />
    </>
  );
}
