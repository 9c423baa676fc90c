import { weighInWords as words } from '../../../words/index.ts';
import type { Addition, Batch } from './batch.ts';
import styles from './mishap.module.css';
import { StrikeAddition } from './strike-addition.tsx';

interface Props {
  readonly batch: Batch;
  readonly screen: Addition;
}

/** What is in of a line that is weighed in parts: each part with its lot, and each may be struck. */
export const EntriesSoFar = ({ batch, screen }: Props) =>
  screen.entries.length > 0 && (
    <div className={styles.parts}>
      {screen.entries.map((entry) => (
        <div key={entry.entryId} className={styles.part}>
          <p>
            {words.part(entry.actualGrams, entry.lotNumber, entry.by)}
            {entry.substitute !== null && ` (${entry.substitute})`}
          </p>
          <StrikeAddition batch={batch} entryId={entry.entryId} />
        </div>
      ))}
    </div>
  );
