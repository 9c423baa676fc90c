import { useState } from 'react';
import { orderWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { PrintLink } from '../../parts/print-link.tsx';
import { Problems } from '../../parts/problems.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { countUnits } from './count-units.ts';
import { findNextAct } from './find-next-act.ts';
import type { Order } from './order.ts';
import { SendOrder } from './send-order.tsx';

const { one: words } = orderWords;

/** The means to act on an order: the next thing that can be done carries the green, what cannot be done says why. */
export function OrderActions({ order }: { readonly order: Order }) {
  const [isSending, setSending] = useState(false);
  const keep = useWrite('reserveOrder');
  const address = { params: { id: order.id } };
  const units = countUnits(order);
  const isOpen = order.state === 'open' || order.state === 'part-sent';
  const { tinsReady, steps } = order.promise;
  const next = findNextAct(order);
  const isAllAside = units.kept + units.sent >= units.ordered;
  const mayKeep = tinsReady > units.kept || steps.some(({ what }) => what.code === 'order-step-keep-others');
  const reason = isOpen && (tinsReady === 0 ? words.nothingReady : units.kept === 0 && words.nothingAside);
  const keepTins = async () => {
    if (await keep.write({ ...address, body: {} })) tell(words.keptNow);
  };
  return (
    <>
      {isOpen && next !== null && typeof next === 'object' && (
        <LinkButton to={next.to} isAct>
          <Sentence saying={next.words} />
        </LinkButton>
      )}
      {isOpen && !isAllAside && (
        <Button
          isAct={next === 'keep'}
          isDisabled={!mayKeep}
          onPress={() => void keepTins()}
          isBusy={keep.isBusy}
        >
          {words.keep}
        </Button>
      )}
      {isOpen && (
        <>
          <Button isAct={next === 'send'} isDisabled={tinsReady === 0} onPress={() => setSending(true)}>
            {words.send}
          </Button>
          <PrintLink paper="getPickList" address={address} isDisabled={units.kept === 0}>
            {words.pick}
          </PrintLink>
        </>
      )}
      {order.state !== 'cancelled' && (
        <PrintLink paper="getPackingSlip" address={address} isDisabled={units.kept + units.sent === 0}>
          {words.slip}
        </PrintLink>
      )}
      {order.state === 'open' && <LinkButton to={`/orders/${order.id}/change`}>{words.change}</LinkButton>}
      {reason && <p className="soft">{reason}</p>}
      <Problems problems={keep.problems} />
      <SendOrder order={order} isOpen={isSending} onClose={() => setSending(false)} />
    </>
  );
}
