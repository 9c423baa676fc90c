import { materialWords, shelfWords } from '../../../words/index.ts';
import type { Editing } from '../../api/use-editing.ts';
import { useRead } from '../../api/use-read.ts';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import type { MaterialDraft } from './material-draft.ts';

const { form: words } = materialWords;

export function BuyingFields({ editing }: { readonly editing: Editing<MaterialDraft> }) {
  const { draft, set } = editing;
  const currency = useRead('getWorkshop').data?.details?.currency;
  const unit = draft.kind === 'ingredient' ? 'g' : shelfWords.goods.pieces;
  return (
    <FieldGroup title={words.buyTitle}>
      <SideBySide>
        <Field
          label={words.reorderBelow}
          where="details.reorderBelow"
          kind="decimal"
          unit={unit}
          value={draft.reorderBelow}
          onChange={set('reorderBelow')}
          hint={words.reorderHint}
          isOptional
        />
        <Field
          label={words.packSize}
          where="details.packSize"
          kind="decimal"
          unit={unit}
          value={draft.packSize}
          onChange={set('packSize')}
          isOptional
        />
      </SideBySide>
      <SideBySide>
        <Field
          label={words.packPrice}
          where="details.packPrice"
          kind="decimal"
          unit={currency}
          value={draft.packPrice}
          onChange={set('packPrice')}
          isOptional
        />
        <Field
          label={words.leadDays}
          where="details.leadDays"
          kind="whole"
          value={draft.leadDays}
          onChange={set('leadDays')}
          isOptional
        />
      </SideBySide>
    </FieldGroup>
  );
}
