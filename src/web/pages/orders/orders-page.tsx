import { orderWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { List } from '../../parts/list.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Page } from '../../shell/page.tsx';
import type { ListedOrder } from './order.ts';
import { OrderLine } from './order-line.tsx';
import { OrderNav } from './order-nav.tsx';

export const OrdersPage = () => (
  <Loaded read={useRead('listOrders')} title={orderWords.title}>
    {(orders) => <OrdersView orders={orders} />}
  </Loaded>
);

const STUCK: ReadonlySet<string> = new Set<ListedOrder['promise']['answer']>(['no', 'not-for-sale']);

function OrdersView({ orders }: { readonly orders: readonly ListedOrder[] }) {
  const open = orders.filter(({ state }) => state === 'open' || state === 'part-sent');
  const done = orders.filter((order) => !open.includes(order)).reverse();
  const stuck = open.filter(({ promise }) => STUCK.has(promise.answer)).length;
  return (
    <Page
      title={orderWords.title}
      says={orderWords.says(open.length) + (stuck > 0 ? orderWords.saysStuck(stuck) : '')}
      soft={orderWords.soft}
      actions={
        <LinkButton to="/orders/new" isAct>
          {orderWords.enter}
        </LinkButton>
      }
    >
      <OrderNav />
      <Card title={orderWords.open} aside={open.length || undefined} isFlush>
        <List rows={open} keyOf={({ id }) => id} empty={orderWords.noneOpen}>
          {(order) => <OrderLine order={order} />}
        </List>
      </Card>
      <Card title={orderWords.done} aside={done.length || undefined} isFlush>
        <List rows={done} keyOf={({ id }) => id} empty={orderWords.noneDone}>
          {(order) => <OrderLine order={order} />}
        </List>
      </Card>
    </Page>
  );
}
