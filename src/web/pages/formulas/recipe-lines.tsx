import { formulaWords, sayGrams } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { ComboBox } from '../../parts/combo-box.tsx';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import type { Choice } from '../../parts/select.tsx';
import styles from './recipe.module.css';
import { type DraftLine, emptyLine, percentOf, type RecipeDraft, totalGrams } from './recipe-draft.ts';

interface Props {
  readonly draft: RecipeDraft;
  readonly onChange: (lines: readonly DraftLine[]) => void;
  readonly choices: readonly (Choice & { readonly about?: string })[];
  /** For what is in no list yet. */
  readonly onNewMaterial: () => void;
}

/** Lines in grams, with their percent beside them as they are typed. */
export function RecipeLines({ draft, onChange, choices, onNewMaterial }: Props) {
  const { lines } = draft;
  const change = (key: string, part: Partial<DraftLine>) =>
    onChange(lines.map((line) => (line.key === key ? { ...line, ...part } : line)));
  return (
    <FieldGroup title={formulaWords.linesTitle}>
      {choices.length === 0 && <p>{formulaWords.noMaterial}</p>}
      {lines.map((line, index) => (
        <fieldset key={line.key} className={styles.line} aria-label={formulaWords.lineOf(index + 1)}>
          <div className={styles.stage}>
            <Field
              label={formulaWords.stage}
              where={`details.lines[${index}].stage`}
              value={line.stage}
              onChange={(stage) => change(line.key, { stage })}
            />
          </div>
          <div className={styles.item}>
            <ComboBox
              label={formulaWords.item}
              where={`details.lines[${index}].itemId`}
              value={line.item === '' ? null : line.item}
              onChange={(item) => change(line.key, { item: item ?? '' })}
              choices={choices}
            />
          </div>
          <div className={styles.grams}>
            <Field
              label={formulaWords.grams}
              where={`details.lines[${index}].grams`}
              kind="decimal"
              unit="g"
              value={line.grams}
              onChange={(grams) => change(line.key, { grams })}
            />
          </div>
          <p className={styles.percent}>
            {percentOf(line, draft) === '' ? '' : `${percentOf(line, draft)} %`}
          </p>
          <div className={styles.out}>
            <Button
              label={formulaWords.takeOutLine(index + 1)}
              onPress={() => onChange(lines.filter((one) => one.key !== line.key))}
            >
              −
            </Button>
          </div>
        </fieldset>
      ))}
      <div className={styles.foot}>
        <Button onPress={() => onChange([...lines, emptyLine(lines.at(-1)?.stage ?? 'Melt')])}>
          {formulaWords.addLine}
        </Button>
        <Button onPress={onNewMaterial}>{formulaWords.newMaterial}</Button>
        <p aria-live="polite">
          <strong>
            {formulaWords.total}: {sayGrams(totalGrams(draft))}
            {totalGrams(draft) !== '0' && ', 100 %'}
          </strong>
        </p>
      </div>
    </FieldGroup>
  );
}
