import { shellWords } from '../../words/index.ts';
import styles from './shell.module.css';

export const MAIN_ID = 'main';

export const SkipLink = () => (
  <a className={styles.skip} href={`#${MAIN_ID}`} onClick={() => document.getElementById(MAIN_ID)?.focus()}>
    {shellWords.skip}
  </a>
);
