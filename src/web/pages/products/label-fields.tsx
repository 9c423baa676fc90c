import { DURABILITY_THRESHOLD_MONTHS } from '../../../catalogue/index.ts';
import { productWords } from '../../../words/index.ts';
import type { Editing } from '../../api/use-editing.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import { Select } from '../../parts/select.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { readWhole } from '../../show/read-whole.ts';
import { FaceFields } from './face-fields.tsx';
import { MarketFields } from './market-fields.tsx';
import type { ProductDraft } from './product-draft.ts';
import { TextsFields } from './texts-fields.tsx';

const { form: words } = productWords;
const WHYS = Object.entries(words.noOpenedWhys).map(([id, name]) => ({ id, name }));

export function LabelFields({ editing }: { readonly editing: Editing<ProductDraft> }) {
  const { draft, set } = editing;
  const currency = useRead('getWorkshop').data?.details?.currency;
  return (
    <FieldGroup title={words.labelTitle}>
      <MarketFields editing={editing} />
      <Field
        label={words.function}
        where="details.functionText"
        value={draft.functionText}
        onChange={set('functionText')}
        hint={words.functionHint}
        isOptional
      />
      <Field
        label={words.precautions}
        where="details.precautions"
        kind="long"
        value={draft.precautions}
        onChange={set('precautions')}
        isOptional
      />
      <TextsFields value={draft.texts} onChange={set('texts')} />
      <Field
        label={words.gtin}
        where="details.gtin"
        value={draft.gtin}
        onChange={set('gtin')}
        hint={words.gtinHint}
        isOptional
      />
      <SideBySide>
        <Field
          label={words.bestBefore}
          where="details.bestBeforeMonths"
          kind="whole"
          least={1}
          unit={words.months}
          value={draft.bestBeforeMonths}
          onChange={set('bestBeforeMonths')}
          hint={words.bestBeforeHint}
        />
        <Field
          label={words.opened}
          where="details.openedMonths"
          kind="whole"
          least={1}
          unit={words.months}
          value={draft.openedMonths}
          onChange={set('openedMonths')}
          hint={words.openedHint}
          isOptional
        />
        <Select
          label={words.noOpened}
          where="details.noOpenedPeriod"
          value={draft.noOpenedPeriod}
          onChange={(why) => set('noOpenedPeriod')(why as ProductDraft['noOpenedPeriod'])}
          choices={WHYS}
          none={words.mayNeedOpened}
        />
        <Field
          label={words.price}
          where="details.price"
          kind="decimal"
          unit={currency}
          value={draft.price}
          onChange={set('price')}
          isOptional
        />
      </SideBySide>
      {keepsBeyond(draft.bestBeforeMonths) && (
        <div className="soft">
          <p>{words.dateOrJar(DURABILITY_THRESHOLD_MONTHS)}</p>
          <Button onPress={() => set('bestBeforeMonths')(String(DURABILITY_THRESHOLD_MONTHS))}>
            {words.takeDate(DURABILITY_THRESHOLD_MONTHS)}
          </Button>
        </div>
      )}
      <FaceFields title={words.face} where="details.faceMm" value={draft.faceMm} onChange={set('faceMm')} />
      <FaceFields title={words.back} where="details.backMm" value={draft.backMm} onChange={set('backMm')} />
    </FieldGroup>
  );
}

/** Longer than the law asks for a date: then the open jar stands there, unless a shorter date is chosen. */
function keepsBeyond(typed: string): boolean {
  const months = readWhole(typed, 'details.bestBeforeMonths');
  return months.ok && months.value > DURABILITY_THRESHOLD_MONTHS;
}
