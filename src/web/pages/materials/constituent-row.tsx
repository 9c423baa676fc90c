import { X } from 'lucide-react';
import { materialWords, termWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Select } from '../../parts/select.tsx';
import type { ConstituentDraft } from './material-draft.ts';
import styles from './materials.module.css';

interface Props {
  readonly row: ConstituentDraft;
  readonly index: number;
  readonly onChange: (row: ConstituentDraft) => void;
  readonly onRemove: () => void;
}

const { form: words } = materialWords;
const CONFIDENCES = Object.entries(termWords.confidence).map(([id, name]) => ({ id, name }));
const PERCENTS = [
  ['leastPercent', words.least],
  ['typicalPercent', words.typical],
  ['mostPercent', words.most],
] as const;

export function ConstituentRow({ row, index, onChange, onRemove }: Props) {
  const where = (field: string) => `details.constituents[${index}].${field}`;
  const set = (field: keyof ConstituentDraft) => (value: string) => onChange({ ...row, [field]: value });
  return (
    <fieldset className={styles.row} aria-label={words.constituent(index + 1)}>
      <Field label={words.constituentName} where={where('name')} value={row.name} onChange={set('name')} />
      {PERCENTS.map(([field, label]) => (
        <Field
          key={field}
          label={label}
          where={where(field)}
          kind="decimal"
          unit="%"
          value={row[field]}
          onChange={set(field)}
        />
      ))}
      <Button onPress={onRemove} label={words.removeConstituent(row.name || words.constituent(index + 1))}>
        <X size={20} aria-hidden />
      </Button>
      <div className={styles.more}>
        <Field label={words.constituentCas} where={where('cas')} value={row.cas} onChange={set('cas')} />
        <Field label={words.source} where={where('source')} value={row.source} onChange={set('source')} />
        <Select
          label={words.confidence}
          where={where('confidence')}
          value={row.confidence}
          onChange={set('confidence')}
          choices={CONFIDENCES}
        />
      </div>
    </fieldset>
  );
}
