import { materialWords } from '../../../words/index.ts';
import { makeId } from '../../api/make-id.ts';
import { Button } from '../../parts/button.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import { ConstituentRow } from './constituent-row.tsx';
import type { ConstituentDraft } from './material-draft.ts';

interface Props {
  readonly value: readonly ConstituentDraft[];
  readonly onChange: (constituents: readonly ConstituentDraft[]) => void;
}

const { form: words } = materialWords;

const emptyConstituent = (): ConstituentDraft => ({
  key: makeId(),
  name: '',
  cas: '',
  leastPercent: '',
  typicalPercent: '',
  mostPercent: '',
  source: '',
  confidence: 'supplier',
});

export const ConstituentFields = ({ value, onChange }: Props) => (
  <FieldGroup title={words.constituentsTitle}>
    <p className="soft">{words.constituentsHint}</p>
    {value.map((row, index) => (
      <ConstituentRow
        key={row.key}
        row={row}
        index={index}
        onChange={(next) => onChange(value.map((one) => (one.key === row.key ? next : one)))}
        onRemove={() => onChange(value.filter(({ key }) => key !== row.key))}
      />
    ))}
    <div>
      <Button onPress={() => onChange([...value, emptyConstituent()])}>{words.addConstituent}</Button>
    </div>
  </FieldGroup>
);
