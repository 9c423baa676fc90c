import { Minus, Plus } from 'lucide-react';
import { Button } from 'react-aria-components';
import { sayDecimal, stepWords } from '../../../words/index.ts';
import bench from './bench.module.css';
import styles from './step.module.css';

interface Props {
  /** Minutes; '' where it runs until somebody stops it. */
  readonly value: string;
  readonly onChange: (value: string) => void;
}

const { whip: words } = stepWords;

/** Half a minute a tap, from half a minute to half an hour (common practice, no source). */
const [STEP, LEAST, MOST, USUAL] = [0.5, 0.5, 30, 2];

const moved = (value: string, by: number): string => {
  const now = Number(value);
  if (value === '' || !Number.isFinite(now)) return String(USUAL);
  return String(Math.min(MOST, Math.max(LEAST, now + by)));
};

/** How long a round runs: taps, no typing. */
export const RoundLength = ({ value, onChange }: Props) => (
  <div className={styles.length}>
    <Button
      className={styles.stepper ?? ''}
      aria-label={words.shorter}
      onPress={() => onChange(moved(value, -STEP))}
    >
      <Minus size={36} aria-hidden />
    </Button>
    <p aria-live="polite">
      <span className={`soft ${styles.lengthName}`}>{words.length}</span>
      <span className={`${bench.digits} ${styles.lengthName}`}>
        {value === '' ? words.openEnd : sayDecimal(value)}
        {value !== '' && <small>min</small>}
      </span>
    </p>
    <Button
      className={styles.stepper ?? ''}
      aria-label={words.longer}
      onPress={() => onChange(moved(value, STEP))}
    >
      <Plus size={36} aria-hidden />
    </Button>
  </div>
);
