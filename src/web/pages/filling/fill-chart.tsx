import { chartWords, sayDecimal, sayGrams } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { ShowWorking } from '../../parts/show-working.tsx';
import { State } from '../../parts/state.tsx';
import { type DrawnTin, drawFills, type FillDrawing, type LineKind, placeWords } from './draw-fills.ts';
import styles from './run.module.css';
import { isTin, type Run } from './run.ts';

const LOOKS: Readonly<Record<LineKind, string | undefined>> = {
  label: styles.declared,
  aim: styles.aim,
  limit1: styles.limit,
  limit2: styles.limit,
  centre: styles.centre,
  upper: styles.control,
  lower: styles.control,
};
const WORDS: Readonly<Record<LineKind, string>> = {
  label: chartWords.label,
  aim: chartWords.aim,
  limit1: chartWords.limit1,
  limit2: chartWords.limit2,
  centre: chartWords.centre,
  upper: chartWords.upper,
  lower: chartWords.lower,
};

/** The weights as they come, against label, limits, aim and, once there are enough, control limits. The table says the same. */
export function FillChart({ run }: { readonly run: Run }) {
  const kept = run.weights.filter(isTin);
  if (kept.length === 0) return null;
  const drawing = drawFills(run);
  const outside = drawing.tins.filter(({ isOutside }) => isOutside);
  return (
    <Card title={chartWords.title}>
      <figure className={styles.figure}>
        <Picture
          drawing={drawing}
          says={chartWords.says(kept.length, drawing.untilControl > 0 ? null : outside.length)}
        />
        <figcaption className="soft">
          {chartWords.says(kept.length, drawing.untilControl > 0 ? null : outside.length)}{' '}
          {drawing.untilControl > 0 && chartWords.notYet(drawing.untilControl)}
          {drawing.below.map((kind) => (
            <span key={kind}>
              {' '}
              {chartWords.farBelow(
                WORDS[kind],
                sayGrams(run[kind === 'limit1' ? 'limit1Grams' : 'limit2Grams'] ?? ''),
              )}
            </span>
          ))}
        </figcaption>
      </figure>
      {outside.length > 0 && (
        <p>
          <State kind="watch">
            {chartWords.wandered(
              outside.map(({ weight }) => sayDecimal(weight.number)).join(', '),
              outside.length === 1,
            )}
          </State>
        </p>
      )}
      <div className={`${styles.ways} ${styles.screenOnly}`}>
        <Button onPress={() => window.print()}>{chartWords.print}</Button>
        {drawing.untilControl === 0 && (
          <ShowWorking
            calculation="control-chart"
            input={{ kind: 'individuals', values: kept.map(({ netGrams }) => Number(netGrams)) }}
          />
        )}
      </div>
    </Card>
  );
}

const Picture = ({ drawing, says }: { readonly drawing: FillDrawing; readonly says: string }) => (
  <svg
    className={styles.plot}
    viewBox={`0 0 ${drawing.width} ${drawing.height}`}
    role="img"
    aria-label={says}
  >
    {placeWords(drawing.lines).map(({ kind, grams, y, wordY }) => (
      <g key={kind}>
        <line x1="0" x2={drawing.width - 84} y1={y} y2={y} className={LOOKS[kind]} />
        <text x={drawing.width - 80} y={wordY + 4} className={styles.word}>
          {WORDS[kind]} {sayDecimal(grams.toFixed(2))}
        </text>
      </g>
    ))}
    <polyline className={styles.path} points={drawing.tins.map(({ x, y }) => `${x},${y}`).join(' ')} />
    {drawing.tins.map((tin) => (
      <Dot key={tin.weight.entryId} tin={tin} />
    ))}
  </svg>
);

/** Too light: a square; outside the control limits: a ring around it. */
const Dot = ({ tin: { weight, x, y, isOutside } }: { readonly tin: DrawnTin }) => (
  <g>
    {isOutside && <circle cx={x} cy={y} r="11" className={styles.ring} />}
    {weight.verdict === 'too-light' ? (
      <rect x={x - 6} y={y - 6} width="12" height="12" className={styles.light} />
    ) : (
      <circle cx={x} cy={y} r="5" className={styles.dot} />
    )}
    <title>{`${weight.number}: ${sayGrams(weight.netGrams)}`}</title>
  </g>
);
