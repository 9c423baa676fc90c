import { makingWords } from '../../../words/index.ts';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import type { Batch } from './batch.ts';
import styles from './bench.module.css';

/** What limits, report or label no longer allow of the batch as it was weighed in: shown until it is resolved. */
export const AsWeighed = ({ batch }: { readonly batch: Batch }) =>
  batch.asWeighed && (
    <div className={styles.wrong}>
      <State kind="stop">{makingWords.overHeld[batch.purpose]}</State>
      <p>
        <Sentence saying={batch.asWeighed} />
        {batch.state === 'making' && ` ${makingWords.overMend}`}
      </p>
    </div>
  );
