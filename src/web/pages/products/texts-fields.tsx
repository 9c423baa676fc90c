import { productWords } from '../../../words/index.ts';
import { CheckBoxes } from '../../parts/check-boxes.tsx';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import type { ProductDraft } from './product-draft.ts';

type Texts = ProductDraft['texts'];
type Language = keyof Texts;

interface Props {
  readonly value: Texts;
  readonly onChange: (texts: Texts) => void;
}

const { form: words } = productWords;
const LANGUAGES = Object.entries(words.languages).map(([id, name]) => ({ id: id as Language, name }));
const NOTHING = { name: '', functionText: '', precautions: '' };
const FIELDS = [
  ['name', words.nameIn, 'text'],
  ['functionText', words.functionIn, 'text'],
  ['precautions', words.precautionsIn, 'long'],
] as const;

/** The words of the label in further languages, by the maker. What is unticked is not said any more. */
export function TextsFields({ value, onChange }: Props) {
  const chosen = LANGUAGES.filter(({ id }) => value[id] !== undefined);
  const choose = (ids: readonly string[]) =>
    onChange(
      Object.fromEntries(
        LANGUAGES.filter(({ id }) => ids.includes(id)).map(({ id }) => [id, value[id] ?? NOTHING]),
      ),
    );
  return (
    <>
      <CheckBoxes
        title={words.texts}
        choices={LANGUAGES}
        chosen={chosen.map(({ id }) => id)}
        onChange={choose}
      />
      {chosen.length > 0 && <p className="soft">{words.textsHint}</p>}
      {chosen.map(({ id, name }) => (
        <FieldGroup key={id} title={name}>
          {FIELDS.map(([field, label, kind]) => (
            <Field
              key={field}
              label={`${label} (${name})`}
              where={`details.texts.${id}.${field}`}
              kind={kind}
              value={value[id]?.[field] ?? ''}
              onChange={(text) => onChange({ ...value, [id]: { ...(value[id] ?? NOTHING), [field]: text } })}
              isOptional
            />
          ))}
        </FieldGroup>
      ))}
    </>
  );
}
