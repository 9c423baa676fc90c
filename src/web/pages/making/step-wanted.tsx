import { makingWords, sayDecimal, stepWords } from '../../../words/index.ts';
import type { Step } from './batch.ts';
import styles from './bench.module.css';
import own from './step.module.css';

/** What the method wants, in digits that are read from two metres. */
export function StepWanted({
  screen,
  isTimed = true,
}: {
  readonly screen: Step;
  readonly isTimed?: boolean;
}) {
  const heat = makingWords.wanted(screen.leastCelsius, screen.mostCelsius);
  const minutes = isTimed ? screen.minutes : null;
  if (heat === '' && minutes === null) return null;
  return (
    <div className={own.wanted}>
      {heat !== '' && (
        <div>
          <p>{stepWords.wantedHeat}</p>
          <p className={styles.digits}>{heat}</p>
        </div>
      )}
      {minutes !== null && (
        <div>
          <p>{stepWords.wantedTime}</p>
          <p className={styles.digits}>
            {sayDecimal(minutes)}
            <small>min</small>
          </p>
        </div>
      )}
    </div>
  );
}

/** What the thermometer should show, beside what it shows. */
export const HeatWanted = ({ screen }: { readonly screen: Step }) => (
  <div className={own.beside}>
    <span className="soft">{stepWords.wantedHeat}</span>
    <strong className={own.typed}>{makingWords.wanted(screen.leastCelsius, screen.mostCelsius)}</strong>
  </div>
);
