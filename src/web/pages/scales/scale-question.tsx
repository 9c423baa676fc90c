import type { Problem } from '../../../core/problem.ts';
import { sayProblem } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import styles from './scales.module.css';

interface Props {
  readonly question: Problem;
  readonly correct: string;
  readonly isRight: string;
  readonly onCorrect: () => void;
  /** null: the scale cannot have shown it. */
  readonly onRight: (() => void) | null;
}

/** A reading that looks like a slip: a person says which it is. */
export function ScaleQuestion({ question, correct, isRight, onCorrect, onRight }: Props) {
  const { says, mend } = sayProblem(question);
  return (
    <div role="alert" className={styles.question}>
      <p>
        <strong>{says}</strong> {mend}
      </p>
      <div className={styles.choices}>
        <Button isBench isAct onPress={onCorrect}>
          {correct}
        </Button>
        {onRight && (
          <Button isBench onPress={onRight}>
            {isRight}
          </Button>
        )}
      </div>
    </div>
  );
}
