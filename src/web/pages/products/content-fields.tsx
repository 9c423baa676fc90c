import { readDecimal } from '../../../core/quantity/index.ts';
import { productWords, termWords } from '../../../words/index.ts';
import type { Editing } from '../../api/use-editing.ts';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { Select } from '../../parts/select.tsx';
import { ShowWorking } from '../../parts/show-working.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import type { ProductDraft } from './product-draft.ts';
import type { ProductParts } from './use-parts.ts';

interface Props {
  readonly editing: Editing<ProductDraft>;
  readonly parts: ProductParts;
}

const { form: words } = productWords;
const BASES = Object.entries(termWords.fillBasis).map(([id, name]) => ({ id, name }));

const AMOUNTS = [
  { key: 'declaredGrams', label: words.declared, unit: 'g', hint: words.declaredHint, isOptional: false },
  { key: 'aimGrams', label: words.aim, unit: 'g', hint: words.aimHint, isOptional: true },
  { key: 'bowlLossPercent', label: words.loss, unit: '%', hint: words.lossHint, isOptional: false },
  {
    key: 'headspacePercent',
    label: words.headspace,
    unit: '%',
    hint: words.headspaceHint,
    isOptional: false,
  },
  { key: 'retainedGrams', label: words.retained, unit: 'g', hint: undefined, isOptional: false },
] as const;

/** Shown once the content is a number above nought. */
function ToleratedError({ declaredGrams }: { readonly declaredGrams: string }) {
  const nominal = readDecimal(declaredGrams, 'declaredGrams');
  if (!nominal.ok || nominal.value.lte(0)) return null;
  const input = { nominal: nominal.value.toNumber(), unit: 'g' };
  return <ShowWorking calculation="tolerable-error" input={input} title={words.tolerated} />;
}

export const ContentFields = ({ editing: { draft, set }, parts }: Props) => (
  <FieldGroup title={words.contentTitle}>
    <Field label={words.name} where="details.name" value={draft.name} onChange={set('name')} />
    <Select
      label={words.formula}
      where="details.formulaId"
      value={draft.formulaId}
      onChange={set('formulaId')}
      choices={parts.formulas}
    />
    <SideBySide>
      {AMOUNTS.map(({ key, ...field }) => (
        <Field
          key={key}
          {...field}
          where={`details.${key}`}
          kind="decimal"
          value={draft[key]}
          onChange={set(key)}
        />
      ))}
    </SideBySide>
    <ToleratedError declaredGrams={draft.declaredGrams} />
    <RadioChoice
      title={words.basis}
      choices={BASES}
      value={draft.fillBasis}
      onChange={(basis) => set('fillBasis')(basis as ProductDraft['fillBasis'])}
    />
  </FieldGroup>
);
