import { partWords, workshopWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useEditing } from '../../api/use-editing.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { CheckBox } from '../../parts/check-box.tsx';
import { Conflict } from '../../parts/conflict.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import type { WorkshopPerson } from './workshop.ts';

interface Props {
  /** Left out: a new one. */
  readonly person: WorkshopPerson | undefined;
  readonly onClose: () => void;
}

const { people: words } = workshopWords;
const NEW = { version: 0, name: '', isActive: true };

export function PersonDialog({ person, onClose }: Props) {
  const editing = useEditing(person ?? NEW, ({ name, isActive }) => ({ name, isActive }));
  const save = useWrite('savePerson');
  const title = person ? words.changeTitle : words.add;
  const submit = async () => {
    const which = person ? { id: person.id, version: editing.version } : {};
    if (!(await save.write({ body: { ...which, ...editing.draft } }))) return;
    tell(words.saved);
    onClose();
  };
  return (
    <Dialog title={title} isOpen onClose={onClose} isHeld={editing.isChanged}>
      <Conflict
        problems={save.problems}
        editing={editing}
        describe={({ name, isActive }) => [
          [words.name, name],
          [words.isActive, isActive ? words.active : words.gone],
        ]}
        onChosen={save.forget}
      />
      <Form label={title} problems={save.problems} onSubmit={() => void submit()}>
        <Field label={words.name} where="name" value={editing.draft.name} onChange={editing.set('name')} />
        {person && (
          <CheckBox isChecked={editing.draft.isActive} onChange={editing.set('isActive')}>
            {words.isActive}
          </CheckBox>
        )}
        <Button type="submit" isAct isBusy={save.isBusy}>
          {partWords.save}
        </Button>
      </Form>
    </Dialog>
  );
}
