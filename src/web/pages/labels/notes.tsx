import type { ReactNode } from 'react';
import type { Problem } from '../../../core/problem.ts';
import { sayProblem } from '../../../words/index.ts';
import { State } from '../../parts/state.tsx';
import styles from './label.module.css';
import type { LabelNote } from './label.ts';

interface Props {
  readonly notes: readonly LabelNote[];
  readonly mend?: ((note: LabelNote) => ReactNode) | undefined;
}

/** What is wrong with a label as it is laid out, or should be known, each with its way out. */
export const Notes = ({ notes, mend }: Props) =>
  notes.length === 0 ? null : (
    <ul className={styles.notes}>
      {notes.map((note) => {
        const { says, mend: wayOut } = sayProblem(note.problem as Problem);
        return (
          <li key={`${note.problem.code} ${note.problem.where}`}>
            <State kind={note.isStop ? 'stop' : 'watch'}>
              <strong>{says}</strong> {wayOut}
            </State>
            {mend?.(note)}
          </li>
        );
      })}
    </ul>
  );
