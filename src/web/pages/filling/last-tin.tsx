import { fillingWords, lightWords, sayGrams } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { State } from '../../parts/state.tsx';
import { lastTin } from './judge-here.ts';
import { PutAside } from './put-aside.tsx';
import styles from './run.module.css';
import type { Run, Weight } from './run.ts';
import { sayFill } from './say-fill.ts';

const KINDS = { inside: 'ready', 'too-light': 'stop', heavy: 'watch' } as const;

interface Props {
  readonly run: Run;
  /** The tin that is being filled up, if one is. */
  readonly refill: Weight | null;
  readonly onRefill: (weight: Weight | null) => void;
}

/** The tin before this one; too light, it is filled up or put aside in one tap. */
export function LastTin({ run, refill, onRefill }: Props) {
  const last = lastTin(run);
  if (refill)
    return (
      <div className={styles.last}>
        <p>
          <State kind="going">
            {refill.verdict === 'heavy'
              ? lightWords.againLess(refill.number)
              : lightWords.again(refill.number)}
          </State>
        </p>
        <Button isBench onPress={() => onRefill(null)}>
          {lightWords.notAgain}
        </Button>
      </div>
    );
  if (!last) return null;
  return (
    <div className={styles.last}>
      <p aria-live="polite">
        <State kind={KINDS[last.verdict]}>
          {fillingWords.tinNumber(last.number)}: {sayGrams(last.netGrams)}, {sayFill(last)}
        </State>
      </p>
      {last.verdict === 'heavy' && (
        <div className={styles.ways}>
          <Button isBench label={lightWords.takenOutOf(last.number)} onPress={() => onRefill(last)}>
            {lightWords.takenOut}
          </Button>
        </div>
      )}
      {last.verdict === 'too-light' && (
        <div className={styles.ways}>
          <Button isBench label={lightWords.refillOf(last.number)} onPress={() => onRefill(last)}>
            {lightWords.refill}
          </Button>
          <PutAside isBench run={run} weight={last} />
        </div>
      )}
    </div>
  );
}
