import { partWords } from '../../words/index.ts';
import { pictureLevel } from '../show/picture-level.ts';
import styles from './bar.module.css';

interface Props {
  /** Percents of the limit, as decimal text; `most` is what decides. */
  readonly typical: string;
  readonly most: string;
  /** As the calculation judged it; the picture judges nothing. */
  readonly isOver?: boolean;
}

const width = (percent: string): string => `${pictureLevel(percent, '100') * 100}%`;

/** Share of a limit: solid what is typical, hatched what it may be at most. */
export const Bar = ({ typical, most, isOver = false }: Props) => (
  <div
    className={isOver ? `${styles.bar} ${styles.over}` : styles.bar}
    role="img"
    aria-label={partWords.shareOfLimit(typical, most)}
  >
    <i className={styles.most} style={{ width: width(most) }} />
    <i className={styles.typical} style={{ width: width(typical) }} />
  </div>
);
