import { chartTables } from '../../../catalogue/index.ts';
import { toText } from '../../../core/quantity/index.ts';
import { chartScaleChecks, ENOUGH_CHECKS } from '../../../core/weighing/index.ts';
import { sayDateWithYear, sayGrams, scaleWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import { State } from '../../parts/state.tsx';
import { Table } from '../../parts/table.tsx';
import { plotChecks } from './plot-checks.ts';
import type { Scale, ScaleCheck } from './scale.ts';
import styles from './scales.module.css';

const { chart: words } = scaleWords;

/** What was off at each check, against its limits: as a picture, in words, and as a table. */
export function ChecksCard({
  scale,
  checks,
}: {
  readonly scale: Scale;
  readonly checks: readonly ScaleCheck[];
}) {
  const [latest] = checks;
  if (!latest)
    return (
      <Card title={words.title} anchor="chart">
        <p>{words.none}</p>
      </Card>
    );
  // Only what was put on the same weight lies on one line.
  const drawn = checks.filter(({ weightGrams }) => weightGrams === latest.weightGrams).toReversed();
  const others = checks.length - drawn.length;
  return (
    <Card title={words.title} anchor="chart">
      <ChecksChart scale={scale} drawn={drawn} limitGrams={latest.limitGrams} />
      {others > 0 && <p className="soft">{words.otherWeights(others)}</p>}
      <Disclosure title={words.table}>{() => <ChecksTable checks={checks} />}</Disclosure>
      <div className={styles.noPaper}>
        <Button onPress={() => window.print()}>{words.print}</Button>
      </div>
    </Card>
  );
}

interface ChartProps {
  readonly scale: Scale;
  readonly drawn: readonly ScaleCheck[];
  readonly limitGrams: string;
}

function ChecksChart({ scale, drawn, limitGrams }: ChartProps) {
  const chart = chartScaleChecks(
    {
      points: drawn,
      limitGrams,
      readabilityGrams: scale.readabilityGrams,
    },
    chartTables,
  );
  const { limitsFrom, outside, isDrifting } = chart;
  const lines = { upper: chart.upperGrams, centre: chart.centreGrams, lower: chart.lowerGrams };
  const plot = plotChecks(
    drawn.map(({ deviationGrams }) => Number(deviationGrams)),
    { upper: lines.upper.toNumber(), centre: lines.centre.toNumber(), lower: lines.lower.toNumber() },
  );
  return (
    <>
      <State kind={isDrifting || outside.length > 0 ? 'watch' : 'ready'}>
        {isDrifting ? words.drifts : outside.length > 0 ? words.outside(outside.length) : words.steady}
      </State>
      <figure className={styles.figure}>
        <svg
          className={styles.chart}
          viewBox={`0 0 ${plot.width} ${plot.height}`}
          role="img"
          aria-label={words.label(drawn.length, drawn[0]?.on ?? '', drawn.at(-1)?.on ?? '', outside.length)}
        >
          {(['upper', 'centre', 'lower'] as const).map((name) => (
            <g key={name}>
              <line
                x1="20"
                x2={plot.width - 20}
                y1={plot[name]}
                y2={plot[name]}
                className={name === 'centre' ? styles.centre : styles.limit}
              />
            </g>
          ))}
          <polyline className={styles.way} points={plot.dots.map(({ x, y }) => `${x},${y}`).join(' ')} />
          {plot.dots.map(({ x, y }, place) =>
            outside.includes(place) ? (
              <rect
                key={drawn[place]?.entryId}
                x={x - 6}
                y={y - 6}
                width="12"
                height="12"
                className={styles.square}
              />
            ) : (
              <circle key={drawn[place]?.entryId} cx={x} cy={y} r="5" className={styles.dot} />
            ),
          )}
        </svg>
        <figcaption className="soft small">
          {(['upper', 'centre', 'lower'] as const)
            .map((name) => `${words[name]} ${sayOff(toText(lines[name].toDecimalPlaces(4)))}`)
            .join(' · ')}
          .<br />
          {sayDateWithYear(drawn[0]?.on ?? '')} – {sayDateWithYear(drawn.at(-1)?.on ?? '')}.{' '}
          {limitsFrom === 'checks' ? words.from.checks : words.from.errors(ENOUGH_CHECKS, drawn.length)}
        </figcaption>
      </figure>
    </>
  );
}

const sayOff = (grams: string): string =>
  grams.startsWith('-') || Number(grams) === 0 ? sayGrams(grams) : `+${sayGrams(grams)}`;

const ChecksTable = ({ checks }: { readonly checks: readonly ScaleCheck[] }) => (
  <Table
    caption={words.title}
    isCaptionHidden
    rows={checks}
    keyOf={({ entryId }) => entryId}
    columns={[
      { head: words.head.on, cell: ({ on }) => sayDateWithYear(on) },
      { head: words.head.reading, cell: ({ readingGrams }) => sayGrams(readingGrams), isNumber: true },
      { head: words.head.off, cell: ({ deviationGrams }) => sayOff(deviationGrams), isNumber: true },
      { head: words.head.limit, cell: ({ limitGrams }) => sayGrams(limitGrams), isNumber: true },
      {
        head: words.head.result,
        cell: ({ isGood }) => (
          <State kind={isGood ? 'ready' : 'stop'}>{isGood ? words.good : words.bad}</State>
        ),
      },
      { head: words.head.by, cell: ({ by }) => by ?? '' },
    ]}
  />
);
