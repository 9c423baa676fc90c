import type { ReactNode } from 'react';
import styles from './state.module.css';

export type StateKind = 'ready' | 'going' | 'watch' | 'stop' | 'plain';

interface Props {
  readonly kind: StateKind;
  /** The word: colour and shape only underline it. */
  readonly children: ReactNode;
}

/** Disc: ready. Half disc: under way. Triangle: watch. Square: stop. Ring: nothing to say of it. */
export const State = ({ kind, children }: Props) => (
  <span className={`${styles.state} ${styles[kind]}`}>
    <span className={styles.shape} aria-hidden="true" />
    <span>{children}</span>
  </span>
);
