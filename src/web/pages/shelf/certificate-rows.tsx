import { X } from 'lucide-react';
import { certificateWords as words } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import { Select } from '../../parts/select.tsx';
import { CATEGORIES } from '../formulas/judged-choices.ts';
import {
  type CertificateDraft,
  type ConstituentDraft,
  emptyConstituent,
  emptyStatement,
  type StatementDraft,
} from './certificate-draft.ts';
import styles from './shelf.module.css';

interface RowsProps {
  readonly draft: CertificateDraft;
  readonly set: <Key extends keyof CertificateDraft>(key: Key) => (value: CertificateDraft[Key]) => void;
}

const FIGURES = [
  ['least', 'leastPercent', words.least],
  ['measured', 'typicalPercent', words.measured],
  ['most', 'mostPercent', words.most],
] as const;

const replaced = <Row extends { readonly key: string }>(rows: readonly Row[], next: Row): Row[] =>
  rows.map((row) => (row.key === next.key ? next : row));

export const ConstituentRows = ({ draft, set }: RowsProps) => (
  <FieldGroup title={words.constituentsTitle}>
    <p className="soft">{words.constituentsHint}</p>
    {draft.constituents.map((row, index) => (
      <ConstituentRow
        key={row.key}
        row={row}
        index={index}
        onChange={(next) => set('constituents')(replaced(draft.constituents, next))}
        onRemove={() => set('constituents')(draft.constituents.filter(({ key }) => key !== row.key))}
      />
    ))}
    <div>
      <Button onPress={() => set('constituents')([...draft.constituents, emptyConstituent()])}>
        {words.addConstituent}
      </Button>
    </div>
  </FieldGroup>
);

interface RowProps<Row> {
  readonly row: Row;
  readonly index: number;
  readonly onChange: (row: Row) => void;
  readonly onRemove: () => void;
}

function ConstituentRow({ row, index, onChange, onRemove }: RowProps<ConstituentDraft>) {
  const where = (field: string) => `details.constituents[${index}].${field}`;
  const typed = (field: keyof ConstituentDraft) => (value: string) => onChange({ ...row, [field]: value });
  return (
    <fieldset className={styles.paperRow} aria-label={words.constituent(index + 1)}>
      <Field label={words.constituentName} where={where('name')} value={row.name} onChange={typed('name')} />
      <Field label={words.cas} where={where('cas')} value={row.cas} onChange={typed('cas')} isOptional />
      {FIGURES.map(([field, place, label]) => (
        <Field
          key={field}
          label={label}
          where={where(place)}
          kind="decimal"
          unit="%"
          value={row[field]}
          onChange={typed(field)}
          isOptional
        />
      ))}
      <Button onPress={onRemove} label={words.removeConstituent(row.name || words.constituent(index + 1))}>
        <X size={20} aria-hidden />
      </Button>
    </fieldset>
  );
}

export const StatementRows = ({ draft, set }: RowsProps) => (
  <FieldGroup title={words.ifraTitle}>
    <p className="soft">{words.ifraHint}</p>
    {draft.statements.map((row, index) => (
      <StatementRow
        key={row.key}
        row={row}
        index={index}
        onChange={(next) => set('statements')(replaced(draft.statements, next))}
        onRemove={() => set('statements')(draft.statements.filter(({ key }) => key !== row.key))}
      />
    ))}
    <div>
      <Button onPress={() => set('statements')([...draft.statements, emptyStatement()])}>
        {words.addIfra}
      </Button>
    </div>
  </FieldGroup>
);

function StatementRow({ row, index, onChange, onRemove }: RowProps<StatementDraft>) {
  const where = (field: string) => `details.ifra[${index}].${field}`;
  const typed = (field: keyof StatementDraft) => (value: string) => onChange({ ...row, [field]: value });
  return (
    <fieldset className={`${styles.paperRow} ${styles.statementRow}`} aria-label={words.ifraLine(index + 1)}>
      <Select
        label={words.ifraCategory}
        where={where('category')}
        value={row.category}
        onChange={typed('category')}
        choices={CATEGORIES}
      />
      <Field
        label={words.ifraEdition}
        where={where('edition')}
        value={row.edition}
        onChange={typed('edition')}
      />
      <Field
        label={words.ifraMost}
        where={where('mostPercent')}
        kind="decimal"
        unit="%"
        value={row.most}
        onChange={typed('most')}
      />
      <Button onPress={onRemove} label={words.removeIfra(row.category)}>
        <X size={20} aria-hidden />
      </Button>
    </fieldset>
  );
}
