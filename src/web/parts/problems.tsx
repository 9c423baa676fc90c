import { type ReactNode, useEffect, useRef } from 'react';
import type { Problem } from '../../core/problem.ts';
import { partWords } from '../../words/index.ts';
import { ProblemLine } from './problem-line.tsx';
import styles from './problems.module.css';
import { State } from './state.tsx';

interface Props {
  readonly problems: readonly Problem[];
  /** Finds the field that a problem is about; undefined where it is on no field. */
  readonly fieldIdOf?: ((where: string) => string) | undefined;
  /** The way out of a problem, where it lies on another page. */
  readonly wayOut?: ((problem: Problem) => ReactNode) | undefined;
  /** What the line of a problem is about, where it goes by a name and not by its number. */
  readonly nameOf?: ((problem: Problem) => string | undefined) | undefined;
}

/** What is wrong and how to mend it. Focus goes there, so that it is read out and never missed. */
export function Problems({ problems, fieldIdOf, wayOut, nameOf }: Props) {
  const box = useRef<HTMLDivElement>(null);
  const shown = useRef<readonly Problem[]>([]);
  useEffect(() => {
    // One fewer is no news: whoever is typing stays in the field.
    if (problems.some((problem) => !shown.current.includes(problem))) box.current?.focus();
    shown.current = problems;
  }, [problems]);
  if (problems.length === 0) return null;
  return (
    <div ref={box} tabIndex={-1} role="alert" className={styles.box}>
      <State kind="stop">{partWords.problems(problems.length)}</State>
      <ul className={styles.list}>
        {problems.map((problem) => (
          <ProblemLine
            key={`${problem.code} ${problem.where} ${problem.found}`}
            problem={problem}
            fieldId={fieldIdOf?.(problem.where)}
            wayOut={wayOut?.(problem)}
            name={nameOf?.(problem)}
          />
        ))}
      </ul>
    </div>
  );
}
