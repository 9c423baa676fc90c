import { useEffect, useState } from 'react';
import type { Problem } from '../../core/problem.ts';
import { partWords, sayProblem } from '../../words/index.ts';
import { Button } from './button.tsx';
import styles from './problems.module.css';

interface Props {
  readonly problem: Problem;
  readonly fieldId: string | undefined;
}

export function ProblemLine({ problem, fieldId }: Props) {
  const { says, mend } = sayProblem(problem);
  const [hasField, setHasField] = useState(false);
  useEffect(() => {
    setHasField(fieldId !== undefined && document.getElementById(fieldId) !== null);
  }, [fieldId]);
  return (
    <li>
      <strong>{says}</strong>
      <span className={styles.mend}>
        {mend}{' '}
        {hasField && fieldId !== undefined && (
          <Button isPlain onPress={() => document.getElementById(fieldId)?.focus()}>
            {partWords.goToField}
          </Button>
        )}
      </span>
    </li>
  );
}
