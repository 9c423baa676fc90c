import { orderWords, sayDate } from '../../../words/index.ts';
import { LinkButton } from '../../parts/link-button.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { AnswerState } from './answer-state.tsx';
import type { ListedOrder } from './order.ts';

/** An order in the list: what was promised stands above what is in it. */
export const OrderLine = ({ order }: { readonly order: ListedOrder }) => (
  <>
    <ListRow>
      <strong>
        {orderWords.titleOf(order.number)}
        {order.customerName !== '' && ` ${orderWords.forWhom(order.customerName)}`}
      </strong>
      <AnswerState promise={order.promise} />
    </ListRow>
    <p>
      <Sentence saying={order.promise.sentence} />
    </p>
    <p className="soft">
      {order.lines.map(({ units, productName }) => orderWords.line(units, productName)).join(', ')}
    </p>
    <ListFoot>
      <span className="soft">{orderWords.wanted(sayDate(order.wantedBy))}</span>
      <LinkButton
        to={`/orders/${order.id}`}
        label={`${orderWords.look}: ${orderWords.titleOf(order.number)}`}
      >
        {orderWords.look}
      </LinkButton>
    </ListFoot>
  </>
);
