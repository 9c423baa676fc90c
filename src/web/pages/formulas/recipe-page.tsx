import { useNavigate, useParams } from '@tanstack/react-router';
import { useEffect, useState } from 'react';
import { formulaWords, partWords } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useDraft } from '../../api/use-draft.ts';
import { useRead } from '../../api/use-read.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Page } from '../../shell/page.tsx';
import { NewMaterialDialog } from '../materials/new-material-dialog.tsx';
import type { Formula } from './formula.ts';
import { JudgedFields } from './judged-fields.tsx';
import { dropProposal, readProposal } from './proposal.ts';
import styles from './recipe.module.css';
import { RecipeCheck } from './recipe-check.tsx';
import { detailsOf, draftOf, linesFrom, withMaterial } from './recipe-draft.ts';
import { RecipeLines } from './recipe-lines.tsx';
import { RecipeSteps } from './recipe-steps.tsx';

export function RecipePage() {
  const { id } = useParams({ from: '/formulas/$id/recipe' });
  const materials = useRead('listMaterials');
  const formulas = useRead('listFormulas');
  return (
    <Loaded read={materials} title={formulaWords.title}>
      {(all) => (
        <Loaded read={formulas} title={formulaWords.title}>
          {(written) => {
            const formula = written.find((one) => one.id === id);
            return formula ? <RecipeForm formula={formula} formulas={written} materials={all} /> : null;
          }}
        </Loaded>
      )}
    </Loaded>
  );
}

interface Props {
  readonly formula: Formula;
  readonly formulas: readonly Formula[];
  readonly materials: AnswerOf<'listMaterials'>;
}

function RecipeForm({ formula, formulas, materials }: Props) {
  const [proposed] = useState(() => readProposal(formula.id));
  // It comes through a reload, and is gone once the form is left.
  useEffect(() => () => dropProposal(formula.id), [formula.id]);
  const first = draftOf(formula);
  const { draft, set, isChanged } = useDraft(
    first,
    proposed ? { ...first, lines: linesFrom(proposed) } : first,
  );
  const save = useWrite('saveRevision');
  const letGo = useUnsaved(isChanged, save);
  const [isEntering, setEntering] = useState(false);
  const navigate = useNavigate();
  const choices = [
    ...formulas
      .filter((one) => one.kind === 'base' && one.id !== formula.id)
      .map((one) => ({ id: `formula:${one.id}`, name: one.name, about: formulaWords.kind.base })),
    ...materials
      .filter((one) => one.details.kind === 'ingredient')
      .map((one) => ({ id: `material:${one.id}`, name: one.details.name, about: one.details.inciEu })),
  ];
  async function submit() {
    const kept = await save.write({
      params: { id: formula.id },
      body: { version: formula.latest?.version ?? null, details: detailsOf(draft) },
    });
    if (!kept) return;
    letGo();
    await navigate({ to: '/formulas/$id', params: { id: formula.id } });
  }
  return (
    <Page
      title={formulaWords.changeTitle(formula.name)}
      soft={
        proposed ? formulaWords.fromTry : formula.latest?.isFixed ? formulaWords.fixed : formulaWords.soft
      }
    >
      <div className={styles.beside}>
        <Form
          label={formulaWords.changeTitle(formula.name)}
          problems={save.problems}
          onSubmit={() => void submit()}
        >
          <RecipeLines
            draft={draft}
            onChange={set('lines')}
            choices={choices}
            onNewMaterial={() => setEntering(true)}
          />
          <RecipeSteps draft={draft} onChange={set('steps')} />
          <JudgedFields draft={draft} set={set} isBase={formula.kind === 'base'} />
          <FormActions>
            <Button type="submit" isAct isBusy={save.isBusy}>
              {partWords.save}
            </Button>
            <LinkButton to={`/formulas/${formula.id}`}>{partWords.cancel}</LinkButton>
          </FormActions>
        </Form>
        <aside>
          <RecipeCheck formulaId={formula.id} draft={draft} />
        </aside>
      </div>
      {isEntering && (
        <NewMaterialDialog
          onClose={() => setEntering(false)}
          onMade={(id) => set('lines')(withMaterial(draft.lines, id))}
        />
      )}
    </Page>
  );
}
