import { orderWords, partWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useEditing } from '../../api/use-editing.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Conflict } from '../../parts/conflict.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';

export type Customer = AnswerOf<'listCustomers'>[number];

interface Props {
  /** Left out: a new one. */
  readonly customer?: Customer;
  readonly onClose: () => void;
  readonly onSaved: (id: string) => void;
}

const { customer: words } = orderWords;
const NEW = { version: 0, name: '', address: '' };

export function CustomerDialog({ customer, onClose, onSaved }: Props) {
  const editing = useEditing(customer ?? NEW, ({ name, address }) => ({ name, address }));
  const save = useWrite('saveCustomer');
  const title = customer ? words.changeTitle : words.add;
  const submit = async () => {
    const which = customer ? { id: customer.id, version: editing.version } : {};
    const saved = await save.write({ body: { ...which, ...editing.draft } });
    if (!saved) return;
    tell(words.saved);
    onSaved(saved.id);
  };
  return (
    <Dialog title={title} isOpen onClose={onClose} isHeld={editing.isChanged}>
      <Conflict
        problems={save.problems}
        editing={editing}
        describe={({ name, address }) => [
          [words.name, name],
          [words.address, address],
        ]}
        onChosen={save.forget}
      />
      <Form label={title} problems={save.problems} onSubmit={() => void submit()}>
        <Field label={words.name} where="name" value={editing.draft.name} onChange={editing.set('name')} />
        <Field
          label={words.address}
          where="address"
          kind="long"
          value={editing.draft.address}
          onChange={editing.set('address')}
          isOptional
        />
        <Button type="submit" isAct isBusy={save.isBusy}>
          {partWords.save}
        </Button>
      </Form>
    </Dialog>
  );
}
