import { partWords, termWords, workshopWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import type { WriteOf } from '../../api/shapes.ts';
import { useDraft } from '../../api/use-draft.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';

type Body = WriteOf<'savePlace'>['body'];

const { places: words } = workshopWords;
const { retained: _, ...mayBeAdded } = termWords.placeKind;
const KINDS = Object.entries(mayBeAdded).map(([id, name]) => ({ id, name }));

export function PlaceDialog({ onClose }: { readonly onClose: () => void }) {
  const { draft, set, isChanged } = useDraft<Body>({ name: '', kind: 'shelf' });
  const save = useWrite('savePlace');
  const submit = async () => {
    if (!(await save.write({ body: draft }))) return;
    tell(words.saved);
    onClose();
  };
  return (
    <Dialog title={words.add} isOpen onClose={onClose} isHeld={isChanged}>
      <Form label={words.add} problems={save.problems} onSubmit={() => void submit()}>
        <Field label={words.name} where="name" value={draft.name} onChange={set('name')} />
        <RadioChoice
          title={words.kind}
          choices={KINDS}
          value={draft.kind}
          onChange={(kind) => set('kind')(kind as Body['kind'])}
        />
        <Button type="submit" isAct isBusy={save.isBusy}>
          {partWords.save}
        </Button>
      </Form>
    </Dialog>
  );
}
