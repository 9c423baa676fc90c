import { makingWords, sayDecimal, sayGrams } from '../../../words/index.ts';
import { State } from '../../parts/state.tsx';
import styles from './bench.module.css';
import { sayNotWeighed } from './say-not-weighed.ts';
import type { Band } from './weigh-band.ts';
import { bandVerdict, handPercent, whyNotWeighed } from './weight-verdict.ts';

interface Props {
  readonly typed: string;
  readonly band: Band;
}

const KINDS = { inside: 'ready', low: 'watch', high: 'stop', nothing: 'plain' } as const;
const WORDS = {
  inside: makingWords.inside,
  low: makingWords.low,
  high: makingWords.high,
  nothing: makingWords.nothingYet,
};

/** A line with the wanted weights and a hand where the scale stands; what is wrong with a figure is said as it is typed. */
export function WeightBand({ typed, band }: Props) {
  const verdict = bandVerdict(typed, band);
  const wrong = typed.trim() === '' ? undefined : whyNotWeighed(typed, makingWords.gramsIn);
  const hand = handPercent(typed, band);
  return (
    <div>
      <div
        className={styles.band}
        role="img"
        aria-label={makingWords.bandLabel(typed || '0', band.lowGrams, band.highGrams)}
      >
        <div className={styles.ok} />
        {hand !== undefined && <div className={styles.hand} style={{ left: `${hand}%` }} />}
        <span className={styles.mark} style={{ left: '40%' }}>
          {sayDecimal(band.lowGrams)}
        </span>
        <span className={styles.mark} style={{ left: '60%' }}>
          {sayDecimal(band.highGrams)}
        </span>
      </div>
      <p aria-live="polite">
        {wrong ? (
          <State kind="stop">{sayNotWeighed(wrong)}</State>
        ) : (
          <>
            <State kind={KINDS[verdict]}>{WORDS[verdict]}</State>{' '}
            {verdict !== 'nothing' && (
              <span className="soft">
                {makingWords.wantedBetween(sayDecimal(band.lowGrams), sayGrams(band.highGrams))}
              </span>
            )}
          </>
        )}
      </p>
    </div>
  );
}
