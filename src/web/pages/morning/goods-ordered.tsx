import { useState } from 'react';
import type { trace } from '../../../contract/index.ts';
import { morningWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useDraft } from '../../api/use-draft.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';

interface Props {
  readonly line: trace.PurchaseLine;
  readonly today: string;
}

const { ordered: words } = morningWords;

/** What was ordered at the supplier's is marked, so that nobody orders it again. */
export function GoodsOrdered({ line, today }: Props) {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <Button onPress={() => setOpen(true)}>
        {line.onItsWay ? words.change : words.mark}
        <span className="visually-hidden">: {line.title}</span>
      </Button>
      {isOpen && <OrderedDialog line={line} today={today} onClose={() => setOpen(false)} />}
    </>
  );
}

function OrderedDialog({ line, today, onClose }: Props & { readonly onClose: () => void }) {
  const { draft, set, isChanged } = useDraft({
    supplier: line.onItsWay?.supplier ?? line.supplier,
    orderedOn: line.onItsWay?.orderedOn ?? today,
    expectedOn: line.onItsWay?.expectedOn ?? '',
  });
  const mark = useWrite('markOrdered');
  const params = { id: line.materialId };
  const submit = async () => {
    const body = { ...draft, expectedOn: draft.expectedOn === '' ? null : draft.expectedOn };
    if (!(await mark.write({ params, body }))) return;
    tell(words.marked);
    onClose();
  };
  return (
    <Dialog title={words.title(line.title)} isOpen onClose={onClose} isHeld={isChanged}>
      <p>{words.says}</p>
      <Form label={words.title(line.title)} problems={mark.problems} onSubmit={() => void submit()}>
        <Field
          label={words.supplier}
          where="supplier"
          value={draft.supplier}
          onChange={set('supplier')}
          isOptional
        />
        <DateField
          label={words.orderedOn}
          where="orderedOn"
          value={draft.orderedOn}
          onChange={set('orderedOn')}
        />
        <DateField
          label={words.expectedOn}
          where="expectedOn"
          value={draft.expectedOn}
          onChange={set('expectedOn')}
          isOptional
        />
        <Button type="submit" isAct isBusy={mark.isBusy}>
          {words.keep}
        </Button>
      </Form>
      {line.onItsWay && <NotOrdered materialId={line.materialId} onClose={onClose} />}
    </Dialog>
  );
}

function NotOrdered({ materialId, onClose }: { readonly materialId: string; readonly onClose: () => void }) {
  const unmark = useWrite('unmarkOrdered');
  const takeBack = async () => {
    if (!(await unmark.write({ params: { id: materialId }, body: {} }))) return;
    tell(words.unmarked);
    onClose();
  };
  return (
    <Form label={words.unmark} problems={unmark.problems} onSubmit={() => void takeBack()}>
      <Button type="submit" isBusy={unmark.isBusy}>
        {words.unmark}
      </Button>
    </Form>
  );
}
