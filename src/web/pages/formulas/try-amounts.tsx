import { useNavigate } from '@tanstack/react-router';
import type { Problem } from '../../../core/problem.ts';
import { checkWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Field } from '../../parts/field.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { typedDecimal } from '../../show/typed-decimal.ts';
import styles from './check.module.css';
import type { Formula } from './formula.ts';
import { keepProposal } from './proposal.ts';
import { percentOf } from './recipe-draft.ts';

export type TriedLines = NonNullable<Formula['latest']>['lines'];

interface Props {
  readonly formulaId: string;
  readonly written: TriedLines;
  readonly tried: TriedLines;
  /** By line, what keeps it from being judged. */
  readonly wrong: readonly (Problem | undefined)[];
  readonly onTry: (lines: TriedLines) => void;
}

/** Other amounts of what is in it: the answer above follows at every key, and nothing is kept. */
export function TryAmounts({ formulaId, written, tried, wrong, onTry }: Props) {
  const navigate = useNavigate();
  const isChanged = tried !== written;
  const isWrong = wrong.some((each) => each !== undefined);
  const whole = { lines: tried.map((line, index) => ({ ...line, key: String(index), item: line.itemId })) };
  async function changeRecipe() {
    const lines = tried.map(({ stage, itemKind, itemId, grams }) => ({ stage, itemKind, itemId, grams }));
    keepProposal(formulaId, lines);
    await navigate({ to: '/formulas/$id/recipe', params: { id: formulaId } });
  }
  return (
    <Card title={checkWords.tryTitle} anchor="try">
      <p className="soft small">{checkWords.trySoft}</p>
      <div className={styles.tried}>
        {whole.lines.map((line, index) => (
          <div key={line.key} className={styles.triedLine}>
            <Field
              label={line.itemName}
              where={`details.lines[${index}].grams`}
              kind="decimal"
              unit="g"
              value={line.grams}
              wrong={wrong[index]}
              onChange={(grams) =>
                onTry(tried.map((one, place) => (place === index ? { ...one, grams } : one)))
              }
            />
            <span className={styles.triedPercent}>{isWrong ? '–' : `${percentOf(line, whole)} %`}</span>
          </div>
        ))}
      </div>
      {isChanged && (
        <FormActions>
          {!isWrong && (
            <Button isAct onPress={() => void changeRecipe()}>
              {checkWords.tryKeep}
            </Button>
          )}
          <Button onPress={() => onTry(written)}>{checkWords.tryBack}</Button>
        </FormActions>
      )}
    </Card>
  );
}

/** As the check reads them: a number as typed that cannot be read is told of, never guessed at. */
export const draftLines = (tried: TriedLines) =>
  tried.map(({ stage, itemKind, itemId, grams }) => ({
    stage,
    itemKind,
    itemId,
    grams: typedDecimal(grams),
  }));
