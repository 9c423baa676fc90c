import { makingWords, sayDecimal } from '../../../words/index.ts';
import { State } from '../../parts/state.tsx';
import type { Addition } from './batch.ts';
import styles from './bench.module.css';
import { type BandVerdict, handPercent } from './weight-verdict.ts';

interface Props {
  readonly typed: string;
  readonly screen: Addition;
  readonly verdict: BandVerdict;
}

const KINDS = { inside: 'ready', low: 'watch', high: 'stop', nothing: 'plain' } as const;
const WORDS = {
  inside: makingWords.inside,
  low: makingWords.low,
  high: makingWords.high,
  nothing: makingWords.nothingYet,
};

/** A line with the allowed weights and a hand where the scale stands. */
export function WeightBand({ typed, screen, verdict }: Props) {
  const hand = handPercent(typed, screen);
  return (
    <div>
      <div
        className={styles.band}
        role="img"
        aria-label={makingWords.bandLabel(typed || '0', screen.lowGrams, screen.highGrams)}
      >
        <div className={styles.ok} />
        {hand !== undefined && <div className={styles.hand} style={{ left: `${hand}%` }} />}
        <span className={styles.mark} style={{ left: '40%' }}>
          {sayDecimal(screen.lowGrams)}
        </span>
        <span className={styles.mark} style={{ left: '60%' }}>
          {sayDecimal(screen.highGrams)}
        </span>
      </div>
      <p aria-live="polite">
        <State kind={KINDS[verdict]}>{WORDS[verdict]}</State>
      </p>
    </div>
  );
}
