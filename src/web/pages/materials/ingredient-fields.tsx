import { materialWords, termWords } from '../../../words/index.ts';
import type { Editing } from '../../api/use-editing.ts';
import { CheckBox } from '../../parts/check-box.tsx';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import { Select } from '../../parts/select.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { ConstituentFields } from './constituent-fields.tsx';
import { findNamedOrigins } from './find-named-origins.ts';
import type { MaterialDraft } from './material-draft.ts';
import { OriginFields } from './origin-fields.tsx';
import type { SourceOf } from './source-of.ts';
import { StatementFields } from './statement-fields.tsx';

const { form: words } = materialWords;
const ROLES = Object.entries(termWords.role).map(([id, name]) => ({ id, name }));

/** Text fields that stand side by side, two by two. */
const LABEL_FIELDS = [
  ['botanical', words.botanical],
  ['cas', words.cas],
  ['plantPart', words.plantPart],
  ['process', words.process],
] as const;

/** Where nothing says where it comes from. */
const HINTS = {
  botanical: undefined,
  cas: words.casHint,
  plantPart: words.plantPartHint,
  process: words.processHint,
} as const;

interface Props {
  readonly editing: Editing<MaterialDraft>;
  readonly sourceOf: SourceOf;
}

export function IngredientFields({ editing, sourceOf }: Props) {
  const { draft, set } = editing;
  return (
    <>
      <FieldGroup title={words.labelTitle}>
        <Field
          label={words.inciEu}
          where="details.inciEu"
          value={draft.inciEu}
          onChange={set('inciEu')}
          hint={sourceOf('inciEu') ?? words.inciHint}
        />
        <Field
          label={words.inciUs}
          where="details.inciUs"
          value={draft.inciUs}
          onChange={set('inciUs')}
          hint={sourceOf('inciUs')}
          isOptional
        />
        <SideBySide>
          {LABEL_FIELDS.map(([key, label]) => (
            <Field
              key={key}
              label={label}
              where={`details.${key}`}
              value={draft[key]}
              onChange={set(key)}
              hint={sourceOf(key) ?? HINTS[key]}
              isOptional
            />
          ))}
        </SideBySide>
        <SideBySide>
          <Select
            label={words.role}
            where="details.role"
            value={draft.role ?? ''}
            onChange={(role) => set('role')(role === '' ? null : (role as MaterialDraft['role']))}
            choices={ROLES}
            none={words.noRole}
          />
          <Field
            label={words.density}
            where="details.densityGramsPerMl"
            kind="decimal"
            unit="g/ml"
            value={draft.densityGramsPerMl}
            onChange={set('densityGramsPerMl')}
            isOptional
          />
        </SideBySide>
        <CheckBox isChecked={draft.isNano} onChange={set('isNano')}>
          {words.isNano}
        </CheckBox>
      </FieldGroup>
      <OriginFields value={draft.origins} named={findNamedOrigins(draft)} onChange={set('origins')} />
      <ConstituentFields value={draft.constituents} onChange={set('constituents')} />
      <StatementFields editing={editing} />
    </>
  );
}
