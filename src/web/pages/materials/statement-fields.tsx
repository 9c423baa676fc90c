import { materialWords, termWords } from '../../../words/index.ts';
import type { Editing } from '../../api/use-editing.ts';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import type { MaterialDraft } from './material-draft.ts';

const { form: words } = materialWords;
const UNSAID = 'unsaid';
const CHOICES = [
  ...Object.entries(termWords.constituentsAre).map(([id, name]) => ({ id, name })),
  { id: UNSAID, name: words.constituentsUnsaid },
];

/** Whether the list is everything, and what the supplier allows: both are asked for by the check, and name a paper. */
export function StatementFields({ editing }: { readonly editing: Editing<MaterialDraft> }) {
  const { draft, set } = editing;
  return (
    <>
      <RadioChoice
        title={words.constituentsAreTitle}
        choices={CHOICES}
        value={draft.constituentsAre ?? UNSAID}
        onChange={(id) =>
          set('constituentsAre')(id === UNSAID ? null : (id as MaterialDraft['constituentsAre']))
        }
      />
      {draft.constituentsAre !== null && (
        <Field
          label={words.constituentsPaper}
          where="details.constituentsPaper"
          value={draft.constituentsPaper}
          onChange={set('constituentsPaper')}
          hint={words.constituentsPaperHint}
          isOptional={draft.constituentsAre === 'partial'}
        />
      )}
      <FieldGroup title={words.supplierLimitTitle}>
        <SideBySide>
          <Field
            label={words.supplierMost}
            where="details.supplierMostPercent"
            kind="decimal"
            unit="%"
            value={draft.supplierMostPercent}
            onChange={set('supplierMostPercent')}
            isOptional
          />
          <Field
            label={words.supplierPaper}
            where="details.supplierPaper"
            value={draft.supplierPaper}
            onChange={set('supplierPaper')}
            isOptional
          />
        </SideBySide>
      </FieldGroup>
    </>
  );
}
