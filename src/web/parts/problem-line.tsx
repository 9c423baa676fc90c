import { type ReactNode, useEffect, useState } from 'react';
import type { Problem } from '../../core/problem.ts';
import { partWords } from '../../words/index.ts';
import { Button } from './button.tsx';
import styles from './problems.module.css';
import { sayHere } from './say-here.ts';

interface Props {
  readonly problem: Problem;
  readonly fieldId: string | undefined;
  readonly wayOut?: ReactNode;
  /** Of the line that it is on. */
  readonly name?: string | undefined;
}

/** The name of a field as it stands on the page; undefined where the problem is on no field. */
function findLabel(fieldId: string | undefined): string | undefined {
  if (fieldId === undefined || document.getElementById(fieldId) === null) return undefined;
  return document.querySelector(`label[for="${CSS.escape(fieldId)}"]`)?.firstChild?.textContent?.trim();
}

export function ProblemLine({ problem, fieldId, wayOut, name }: Props) {
  const [label, setLabel] = useState<string>();
  // One of several lines goes by its number too: three fields of a page may be called “Grams”.
  const numbered = problem.where.includes('[') ? undefined : label;
  const named = name && (label ? `${name}, ${label.toLowerCase()}` : name);
  const { says, mend } = sayHere(problem, named || numbered);
  useEffect(() => setLabel(findLabel(fieldId)), [fieldId]);
  return (
    <li>
      <strong>{says}</strong>
      <span className={styles.mend}>{mend}</span>
      {wayOut}
      {label !== undefined && fieldId !== undefined && (
        <Button isPlain onPress={() => document.getElementById(fieldId)?.focus()}>
          {partWords.goToField(label)}
        </Button>
      )}
    </li>
  );
}
