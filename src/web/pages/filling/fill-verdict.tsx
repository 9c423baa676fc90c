import { roundToStep, toText } from '../../../core/quantity/index.ts';
import { fillingWords, lightWords } from '../../../words/index.ts';
import { State } from '../../parts/state.tsx';
import { sayNotWeighed } from '../making/say-not-weighed.ts';
import { whyNotWeighed } from '../making/weight-verdict.ts';
import { judgeTin, measureTin, type TinNow } from './judge-here.ts';
import styles from './run.module.css';
import type { Run } from './run.ts';

interface Props {
  readonly run: Run;
  readonly now: TinNow;
}

const KINDS = { inside: 'ready', 'too-light': 'stop', heavy: 'watch' } as const;

/** What the tin on the scale is, and what to do, while it still stands there. */
export const FillVerdict = ({ run, now }: Props) => (
  <div className={styles.live} aria-live="polite">
    <Said run={run} now={now} />
  </div>
);

function Said({ run, now }: Props) {
  if (now.gross.trim() === '') return null;
  const wrong = whyNotWeighed(now.gross, fillingWords.gross);
  if (wrong) return <State kind="stop">{sayNotWeighed(wrong)}</State>;
  const tin = measureTin(run, now);
  const judged = tin?.netGrams.gt(0) ? judgeTin(run, tin) : null;
  if (!judged) return null;
  const { verdict, gramsToAdd, gramsToSpare } = judged;
  const { readabilityGrams } = run.scale;
  const add = toText(roundToStep(gramsToAdd, readabilityGrams, 'up'));
  const spare = toText(roundToStep(gramsToSpare, readabilityGrams, 'down'));
  return (
    <>
      <State kind={KINDS[verdict]}>
        {verdict === 'inside' && lightWords.inside}
        {verdict === 'too-light' && lightWords.lightBy(add)}
        {verdict === 'heavy' && lightWords.heavy(spare)}
      </State>
      {verdict === 'too-light' && <strong>{lightWords.add(add)}</strong>}
      {verdict === 'heavy' && <strong>{lightWords.spare(spare)}</strong>}
    </>
  );
}
