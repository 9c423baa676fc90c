import { orderWords, sayDate, sayDateWithYear } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Figures } from '../../parts/figures.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { Page } from '../../shell/page.tsx';
import { useParam } from '../../shell/use-param.ts';
import { AnswerState } from './answer-state.tsx';
import { CancelOrder } from './cancel-order.tsx';
import { countUnits } from './count-units.ts';
import type { Order } from './order.ts';
import { OrderActions } from './order-actions.tsx';
import { OrderLinesTable } from './order-lines-table.tsx';
import { Parcels } from './parcels.tsx';
import { PromiseDetail } from './promise-detail.tsx';

const { one: words } = orderWords;

export function OrderPage() {
  const id = useParam('id');
  return (
    <Loaded key={id} read={useRead('getOrder', { params: { id } })} title={orderWords.title}>
      {(order) => <OrderView order={order} />}
    </Loaded>
  );
}

function OrderView({ order }: { readonly order: Order }) {
  const { promise } = order;
  const units = countUnits(order);
  return (
    <Page
      title={orderWords.titleOf(order.number)}
      above={
        <>
          {words.above(order.number)} {orderWords.forWhom(order.customerName || orderWords.noName)} ·{' '}
          <AnswerState promise={promise} />
        </>
      }
      says={<Sentence saying={promise.sentence} />}
      soft={`${words.placed(sayDateWithYear(order.placedOn))}, ${orderWords.wanted(sayDate(order.wantedBy))}.`}
      actions={<OrderActions order={order} />}
    >
      <Figures>
        <Figure label={words.tins} value={units.ordered} />
        <Figure label={words.kept} value={units.kept} />
        <Figure label={words.sent} value={units.sent} />
      </Figures>
      {order.labelNotes.map((note) => (
        <p key={JSON.stringify(note.parameters)} role="note">
          <Sentence saying={note} />
        </p>
      ))}
      <Card title={words.linesTitle} isFlush>
        <OrderLinesTable lines={order.lines} />
      </Card>
      {order.customerAddress !== '' && (
        <p>
          <span className="soft">{words.address}:</span> {order.customerAddress.split('\n').join(', ')}
        </p>
      )}
      {order.note !== '' && (
        <p>
          <span className="soft">{words.note}:</span> {order.note}
        </p>
      )}
      <PromiseDetail promise={promise} />
      <Parcels parcels={order.parcels} />
      {order.state === 'open' && <CancelOrder order={order} />}
    </Page>
  );
}
