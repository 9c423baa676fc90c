import { productFileWords } from '../../../words/index.ts';
import type { Editing } from '../../api/use-editing.ts';
import { Card } from '../../parts/card.tsx';
import { Field } from '../../parts/field.tsx';
import { Select } from '../../parts/select.tsx';
import type { FileDraft, FileView } from './file-draft.ts';
import styles from './product-files.module.css';

const { form: words } = productFileWords;

type TextField = {
  [Key in keyof FileDraft]: FileDraft[Key] extends string ? Key : never;
}[keyof FileDraft];

const ANSWERS = Object.entries(words.answers).map(([id, name]) => ({ id, name }));

interface Asked {
  readonly field: Exclude<TextField, 'exposureType' | 'waterInUse'>;
  readonly label: string;
  readonly hint: string;
}

interface Part {
  readonly title: string;
  readonly fields: readonly Asked[];
}

const ask = (field: Asked['field'], label: string, hint: string): Asked => ({ field, label, hint });

/** By the heading that a gap leads to. */
const PARTS = {
  description: {
    title: words.description,
    fields: [ask('description', words.description, words.descriptionHint)],
  },
  physical: {
    title: words.physicalTitle,
    fields: [
      ask('physical', words.physical, words.physicalHint),
      ask('stability', words.stability, words.stabilityHint),
    ],
  },
  microbiology: {
    title: words.microbiology,
    fields: [ask('microbiology', words.microbiology, words.microbiologyHint)],
  },
  impurities: {
    title: words.impuritiesTitle,
    fields: [
      ask('impurities', words.impurities, words.impuritiesHint),
      ask('packaging', words.packaging, words.packagingHint),
    ],
  },
  use: { title: words.useTitle, fields: [ask('normalUse', words.normalUse, words.normalUseHint)] },
  information: {
    title: words.information,
    fields: [ask('otherInformation', words.information, words.informationHint)],
  },
  method: {
    title: words.methodTitle,
    fields: [
      ask('makingNote', words.makingNote, words.makingHint),
      ask('gmpStatement', words.gmp, words.gmpHint),
    ],
  },
  'animal-testing': {
    title: words.animal,
    fields: [ask('animalTesting', words.animal, words.animalHint)],
  },
} as const satisfies Record<string, Part>;

interface Props {
  readonly part: keyof typeof PARTS;
  readonly editing: Editing<FileDraft, never>;
  readonly exposureTypes?: FileView['exposureTypes'];
}

export const WrittenFields = ({ part, editing: { draft, set }, exposureTypes }: Props) => (
  <Card title={PARTS[part].title} anchor={part}>
    {PARTS[part].fields.map(({ field, label, hint }) => (
      <Field
        key={field}
        label={label}
        where={`details.${field}`}
        kind="long"
        value={draft[field]}
        onChange={set(field)}
        hint={hint}
      />
    ))}
    {part === 'microbiology' && (
      <Select
        label={words.waterInUse}
        where="details.waterInUse"
        value={draft.waterInUse}
        onChange={(value) => set('waterInUse')(value as FileDraft['waterInUse'])}
        none={words.unanswered}
        choices={ANSWERS}
        hint={words.waterHint}
      />
    )}
    {exposureTypes && (
      <Select
        label={words.exposureType}
        where="details.exposureType"
        value={draft.exposureType}
        onChange={set('exposureType')}
        none={words.asFormula}
        choices={exposureTypes}
        hint={words.exposureHint}
      />
    )}
  </Card>
);

interface FunctionProps {
  readonly editing: Editing<FileDraft, never>;
  readonly file: FileView;
}

/** What each material does in it; fragrance and colourant are known by the material's role. */
export function FunctionFields({ editing: { draft, set }, file }: FunctionProps) {
  return (
    <Card title={words.composition} anchor="composition">
      <p className="soft">{words.functionHint}</p>
      <div className={styles.files}>
        {draft.functions.map((row, index) => {
          const material = file.materials.find(({ id }) => id === row.materialId);
          if (!material || material.role !== null) return null;
          return (
            <Field
              key={row.materialId}
              label={words.functionOf(material.name)}
              where={`details.functions[${index}].text`}
              value={row.text}
              onChange={(text) =>
                set('functions')(draft.functions.map((one, at) => (at === index ? { ...one, text } : one)))
              }
            />
          );
        })}
      </div>
    </Card>
  );
}
