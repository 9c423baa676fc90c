import { partWords } from '../../words/index.ts';
import { pictureLevel } from '../show/picture-level.ts';
import { showAmount } from '../show/show-amount.ts';
import styles from './bar.module.css';

interface Props {
  readonly have: string;
  readonly full: string;
  readonly unit: 'g' | 'pieces';
}

/** A thin bar: how much is left of what there is when it is full. */
export const Level = ({ have, full, unit }: Props) => (
  <div
    className={styles.thin}
    role="img"
    aria-label={partWords.level(showAmount(have, unit), showAmount(full, unit))}
  >
    <i style={{ width: `${pictureLevel(have, full) * 100}%` }} />
  </div>
);
