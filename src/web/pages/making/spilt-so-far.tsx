import { mishapWords } from '../../../words/index.ts';
import type { Batch } from './batch.ts';
import styles from './mishap.module.css';
import { StrikeAddition } from './strike-addition.tsx';

interface Props {
  readonly batch: Batch;
  readonly screen: number;
}

/** What was spilt here before it went in: a slip of the figure is struck like any other entry. */
export function SpiltSoFar({ batch, screen }: Props) {
  const own = batch.spills.filter((spill) => spill.screen === screen);
  if (own.length === 0) return null;
  return (
    <div className={styles.parts}>
      {own.map(({ entryId, item, grams, lotNumber, reason }) => (
        <div key={entryId} className={styles.part}>
          <p>
            {mishapWords.spilt(item, grams, lotNumber)}: {reason}
          </p>
          <StrikeAddition batch={batch} entryId={entryId} />
        </div>
      ))}
    </div>
  );
}
