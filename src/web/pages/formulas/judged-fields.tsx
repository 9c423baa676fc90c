import { formulaWords } from '../../../words/index.ts';
import { CheckBoxes } from '../../parts/check-boxes.tsx';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { Select } from '../../parts/select.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { BODY_PARTS, CATEGORIES, PRODUCT_TYPES, STANDINGS, USES } from './judged-choices.ts';
import { chosenUses, OTHER_USE_CHOICES, withChosen } from './other-uses.ts';
import type { RecipeDraft } from './recipe-draft.ts';

interface Props {
  readonly draft: RecipeDraft;
  readonly set: <Key extends keyof RecipeDraft>(key: Key) => (value: RecipeDraft[Key]) => void;
  readonly isBase: boolean;
}

/** What law, IFRA and the report ask of a use; and how the mixture sets and keeps. */
export const JudgedFields = ({ draft, set, isBase }: Props) => (
  <FieldGroup title={formulaWords.judged}>
    <RadioChoice
      title={formulaWords.standingTitle}
      choices={STANDINGS}
      value={draft.standing}
      onChange={(id) => set('standing')(id as RecipeDraft['standing'])}
    />
    <SideBySide>
      <Select
        label={formulaWords.use}
        where="details.use"
        value={draft.use}
        onChange={(id) => set('use')(id as RecipeDraft['use'])}
        choices={USES}
      />
      <Select
        label={formulaWords.category}
        where="details.category"
        value={draft.category}
        onChange={set('category')}
        choices={CATEGORIES}
        hint={formulaWords.categoryHint}
      />
      <Select
        label={formulaWords.bodyPart}
        where="details.bodyPart"
        value={draft.bodyPart}
        onChange={set('bodyPart')}
        choices={BODY_PARTS}
      />
      <Select
        label={formulaWords.productType}
        where="details.productType"
        value={draft.productType}
        onChange={set('productType')}
        choices={PRODUCT_TYPES}
      />
      <Field
        label={formulaWords.minAge}
        where="details.minAgeMonths"
        kind="whole"
        value={draft.minAgeMonths}
        onChange={set('minAgeMonths')}
        hint={formulaWords.minAgeHint}
        isOptional
      />
    </SideBySide>
    <CheckBoxes
      title={formulaWords.otherUsesTitle}
      choices={OTHER_USE_CHOICES}
      chosen={chosenUses(draft.alsoUsedAs)}
      onChange={(chosen) => set('alsoUsedAs')(withChosen(draft.alsoUsedAs, chosen))}
    />
    {isBase && (
      <SideBySide>
        <Field
          label={formulaWords.settingLeast}
          where="details.settingHours.least"
          kind="decimal"
          unit={formulaWords.hours}
          value={draft.settingLeast}
          onChange={set('settingLeast')}
          isOptional
        />
        <Field
          label={formulaWords.settingMost}
          where="details.settingHours.most"
          kind="decimal"
          unit={formulaWords.hours}
          value={draft.settingMost}
          onChange={set('settingMost')}
          isOptional
        />
        <Field
          label={formulaWords.keepMonths}
          where="details.keepMonths"
          kind="whole"
          unit={formulaWords.months}
          value={draft.keepMonths}
          onChange={set('keepMonths')}
          isOptional
        />
      </SideBySide>
    )}
    <Field
      label={formulaWords.note}
      where="details.note"
      kind="long"
      value={draft.note}
      onChange={set('note')}
      isOptional
    />
  </FieldGroup>
);
