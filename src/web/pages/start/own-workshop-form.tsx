import { startWords } from '../../../words/index.ts';
import { personNow } from '../../api/person-now.ts';
import { useDraft } from '../../api/use-draft.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';

const { own: words } = startWords;

export function OwnWorkshopForm() {
  const { draft, set } = useDraft({ name: '', firstPerson: '' });
  const begin = useWrite('beginWorkshop');
  const start = async () => {
    const workshop = await begin.write({ body: { with: 'own', ...draft } });
    personNow.write(workshop?.people[0]?.id ?? null);
  };
  return (
    <Form label={words.form} problems={begin.problems} onSubmit={() => void start()}>
      <Field
        label={words.name}
        where="name"
        value={draft.name}
        onChange={set('name')}
        hint={words.nameHint}
      />
      <Field
        label={words.person}
        where="firstPerson"
        value={draft.firstPerson}
        onChange={set('firstPerson')}
        hint={words.personHint}
      />
      <FormActions>
        <Button type="submit" isAct isBusy={begin.isBusy}>
          {words.start}
        </Button>
      </FormActions>
    </Form>
  );
}
