import { orderWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useEditing } from '../../api/use-editing.ts';
import { useRead } from '../../api/use-read.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { Conflict } from '../../parts/conflict.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { useGoTo } from '../../shell/use-go-to.ts';
import { useParam } from '../../shell/use-param.ts';
import type { Order } from './order.ts';
import { describeOrder, type OrderDraft, readOrderDraft } from './order-draft.ts';
import { OrderForm } from './order-form.tsx';
import { PromisePage } from './promise-page.tsx';
import { usePastDate } from './use-past-date.tsx';

const { form: words } = orderWords;

export function ChangeOrderPage() {
  const id = useParam('id');
  return (
    <Loaded key={id} read={useRead('getOrder', { params: { id } })} title={orderWords.title}>
      {(order) => <ChangeOrder order={order} />}
    </Loaded>
  );
}

const draftOf = ({ customerId, placedOn, wantedBy, note, lines }: Order): OrderDraft => ({
  customerId,
  placedOn,
  wantedBy,
  note,
  lines: lines.map(({ id, productId, units }) => ({ key: id, productId, units: String(units) })),
});

function useNames() {
  const products = useRead('listProducts').data ?? [];
  const customers = useRead('listCustomers').data ?? [];
  return {
    product: (id: string) => products.find((one) => one.id === id)?.details.name ?? '',
    customer: (id: string) => customers.find((one) => one.id === id)?.name ?? '',
  };
}

function ChangeOrder({ order }: { readonly order: Order }) {
  const editing = useEditing(order, draftOf);
  const save = useWrite('saveOrder');
  const letGo = useUnsaved(editing.isChanged, save);
  const goTo = useGoTo();
  const names = useNames();
  const submit = async () => {
    const read = readOrderDraft(editing.draft);
    if (!read.ok) return save.refuse(read.problems);
    if (!(await save.write({ body: { id: order.id, version: editing.version, ...read.value } }))) return;
    letGo();
    tell(words.savedNow);
    goTo(`/orders/${order.id}`);
  };
  const past = usePastDate(
    editing.draft.wantedBy === order.wantedBy ? '' : editing.draft.wantedBy,
    editing.draft.placedOn,
    () => void submit(),
  );
  return (
    <PromisePage title={words.changeTitle(order.number)} draft={editing.draft} orderId={order.id}>
      {(found) => (
        <>
          {past.question}
          <Conflict
            problems={save.problems}
            editing={editing}
            describe={describeOrder(names)}
            onChosen={save.forget}
          />
          <OrderForm
            draft={editing.draft}
            change={(change) => {
              save.forget();
              editing.change(change);
            }}
            problems={save.problems.length > 0 ? save.problems : found}
            isBusy={save.isBusy}
            saveWord={words.saveChange}
            onSubmit={past.ask}
          />
        </>
      )}
    </PromisePage>
  );
}
