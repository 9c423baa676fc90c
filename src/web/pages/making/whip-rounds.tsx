import type { steps } from '../../../contract/index.ts';
import { sayDecimal, sayNumber, stepWords } from '../../../words/index.ts';
import { Moment } from '../../parts/moment.tsx';
import type { Batch, Step } from './batch.ts';
import { densitiesOf } from './read-air.ts';
import styles from './step.module.css';
import { StrikeStep } from './strike-step.tsx';
import { lastRound } from './whip-state.ts';

interface Props {
  readonly batch: Batch;
  readonly screen: Step;
}

const { whip: words } = stepWords;

/** Every round that was looked at; the last one can be struck. */
export function WhipRounds({ batch, screen }: Props) {
  const { whipped } = screen;
  const last = lastRound(screen);
  if (whipped.length === 0) return null;
  return (
    <section className={styles.box} aria-label={words.rounds}>
      <h2>{words.rounds}</h2>
      <ol className={styles.rounds}>
        {whipped.map((each) => (
          <li key={each.entryId}>
            <strong>{stepWords.print.round(each.load, each.round)}</strong>
            <span>
              {stepWords.looks[each.looked]}
              {each.minutes !== null && ` · ${words.ran(sayDecimal(each.minutes))}`}
              {each.celsius !== null && ` · ${each.celsius} °C`}
            </span>
            {each.cups.length > 0 && <span>{sayDensities(each.cups)}</span>}
            <span>{each.goes === 'on' ? words.wentOn : words.stopped}</span>
            {each.remark !== '' && <span>{each.remark}</span>}
            <span className="soft small">
              {each.by}, <Moment at={each.at} />
            </span>
          </li>
        ))}
      </ol>
      {last && !screen.done && batch.state === 'making' && (
        <StrikeStep
          batch={batch}
          entryId={last.entryId}
          word={words.strikeLast}
          title={stepWords.strikeRound}
        />
      )}
    </section>
  );
}

const sayDensities = (cups: readonly steps.FullCup[]): string =>
  densitiesOf(cups)
    .map((density) => `${sayNumber(density.toNumber(), 3)} g/ml`)
    .join(', ');
