import { useNavigate } from '@tanstack/react-router';
import { formulaWords, partWords } from '../../../words/index.ts';
import { useDraft } from '../../api/use-draft.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { Page } from '../../shell/page.tsx';

const KINDS = [
  { id: 'base', name: formulaWords.kindBase },
  { id: 'mixture', name: formulaWords.kindMixture },
] as const;

/** A formula begins with its name; the recipe is written on the next page. */
export function NewFormulaPage() {
  const { draft, set, isChanged } = useDraft({ name: '', code: '', kind: 'mixture' });
  const save = useWrite('saveFormula');
  const letGo = useUnsaved(isChanged, save);
  const navigate = useNavigate();
  async function submit() {
    const made = await save.write({
      body: {
        name: draft.name,
        code: draft.code.trim().toUpperCase(),
        kind: draft.kind as 'base' | 'mixture',
      },
    });
    if (!made) return;
    letGo();
    await navigate({ to: '/formulas/$id/recipe', params: { id: made.id } });
  }
  return (
    <Page title={formulaWords.write} isNarrow>
      <Form label={formulaWords.write} problems={save.problems} onSubmit={() => void submit()}>
        <RadioChoice
          title={formulaWords.kindTitle}
          choices={KINDS}
          value={draft.kind}
          onChange={set('kind')}
        />
        <Field label={formulaWords.name} where="name" value={draft.name} onChange={set('name')} isFirst />
        <Field
          label={formulaWords.code}
          where="code"
          value={draft.code}
          onChange={set('code')}
          hint={formulaWords.codeHint}
        />
        <FormActions>
          <Button type="submit" isAct isBusy={save.isBusy}>
            {formulaWords.firstLine}
          </Button>
          <LinkButton to="/formulas">{partWords.cancel}</LinkButton>
        </FormActions>
      </Form>
    </Page>
  );
}
