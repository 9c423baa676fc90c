import { materialWords, termWords } from '../../../words/index.ts';
import type { Editing } from '../../api/use-editing.ts';
import { Field } from '../../parts/field.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { BuyingFields } from './buying-fields.tsx';
import { IngredientFields } from './ingredient-fields.tsx';
import type { MaterialDraft } from './material-draft.ts';
import { PackagingFields } from './packaging-fields.tsx';
import type { SourceOf } from './source-of.ts';

const { form: words } = materialWords;
const KINDS = Object.entries(termWords.materialKind).map(([id, name]) => ({ id, name }));

interface Props {
  readonly editing: Editing<MaterialDraft>;
  readonly sourceOf: SourceOf;
}

export function MaterialFields({ editing, sourceOf }: Props) {
  const { draft, set } = editing;
  return (
    <>
      <RadioChoice
        title={words.kind}
        choices={KINDS}
        value={draft.kind}
        onChange={(kind) => set('kind')(kind as MaterialDraft['kind'])}
      />
      <SideBySide>
        <Field
          label={words.name}
          where="details.name"
          value={draft.name}
          onChange={set('name')}
          hint={sourceOf('name') ?? words.nameHint}
        />
        <Field
          label={words.supplier}
          where="details.supplier"
          value={draft.supplier}
          onChange={set('supplier')}
          isOptional
        />
      </SideBySide>
      {draft.kind === 'ingredient' ? (
        <IngredientFields editing={editing} sourceOf={sourceOf} />
      ) : (
        <PackagingFields editing={editing} />
      )}
      <Field
        label={words.caution}
        where="details.caution"
        kind="long"
        value={draft.caution}
        onChange={set('caution')}
        isOptional
      />
      <BuyingFields editing={editing} />
    </>
  );
}
