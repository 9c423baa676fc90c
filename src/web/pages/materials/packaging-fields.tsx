import { materialWords, termWords } from '../../../words/index.ts';
import type { Editing } from '../../api/use-editing.ts';
import { Field } from '../../parts/field.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import type { MaterialDraft } from './material-draft.ts';

const { form: words } = materialWords;
const KINDS = Object.entries(termWords.packagingKind).map(([id, name]) => ({ id, name }));

export function PackagingFields({ editing }: { readonly editing: Editing<MaterialDraft> }) {
  const { draft, set } = editing;
  return (
    <>
      <RadioChoice
        title={words.packagingKind}
        choices={KINDS}
        value={draft.packagingKind ?? ''}
        onChange={(kind) => set('packagingKind')(kind as MaterialDraft['packagingKind'])}
      />
      <SideBySide>
        <Field
          label={words.brim}
          where="details.brimMl"
          kind="decimal"
          unit="ml"
          value={draft.brimMl}
          onChange={set('brimMl')}
          isOptional
        />
        <Field
          label={words.tare}
          where="details.tareGrams"
          kind="decimal"
          unit="g"
          value={draft.tareGrams}
          onChange={set('tareGrams')}
          hint={words.tareHint}
          isOptional
        />
      </SideBySide>
    </>
  );
}
