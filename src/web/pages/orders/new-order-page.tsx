import { orderWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useDraft } from '../../api/use-draft.ts';
import { useRead } from '../../api/use-read.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Page } from '../../shell/page.tsx';
import { useGoTo } from '../../shell/use-go-to.ts';
import { emptyOrderLine } from './empty-order-line.ts';
import { type OrderDraft, readOrderDraft } from './order-draft.ts';
import { OrderForm } from './order-form.tsx';
import { PromisePage } from './promise-page.tsx';
import { usePastDate } from './use-past-date.tsx';

const { form: words } = orderWords;

export const NewOrderPage = () => {
  const products = useRead('listProducts');
  const today = useRead('getWorkshop').data?.today ?? '';
  return (
    <Loaded read={products} title={words.title}>
      {(sold) =>
        sold.every(({ details }) => details.isWithdrawn) ? (
          <Page
            title={words.title}
            says={words.noProducts}
            actions={
              <LinkButton to="/products/new" isAct>
                {words.toProducts}
              </LinkButton>
            }
          />
        ) : (
          <NewOrder today={today} />
        )
      }
    </Loaded>
  );
};

function NewOrder({ today }: { readonly today: string }) {
  const { draft, setDraft, isChanged } = useDraft<OrderDraft>({
    customerId: null,
    placedOn: today,
    wantedBy: '',
    note: '',
    lines: [emptyOrderLine()],
  });
  const save = useWrite('saveOrder');
  const letGo = useUnsaved(isChanged, save);
  const goTo = useGoTo();
  const submit = async () => {
    const read = readOrderDraft(draft);
    if (!read.ok) return save.refuse(read.problems);
    const saved = await save.write({ body: read.value });
    if (!saved) return;
    letGo();
    tell(words.savedNow);
    goTo(`/orders/${saved.id}`);
  };
  const past = usePastDate(draft.wantedBy, draft.placedOn, () => void submit());
  return (
    <PromisePage title={words.title} draft={draft}>
      {(found) => (
        <>
          {past.question}
          <OrderForm
            draft={draft}
            change={(change) => {
              save.forget();
              setDraft(change);
            }}
            problems={save.problems.length > 0 ? save.problems : found}
            isBusy={save.isBusy}
            saveWord={words.save}
            onSubmit={past.ask}
          />
        </>
      )}
    </PromisePage>
  );
}
