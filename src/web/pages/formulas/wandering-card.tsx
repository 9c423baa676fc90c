import { sayDecimal, termWords, handWords as words } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { State } from '../../parts/state.tsx';
import { placePercent } from './place-percent.ts';
import styles from './wandering.module.css';

type Line = AnswerOf<'getWandering'>['lines'][number];

/** After three makings: which line wanders, and how much of its room that takes; the one that matters most first. */
export function WanderingCard({ formulaId }: { readonly formulaId: string }) {
  const found = useRead('getWandering', { params: { id: formulaId } }).data;
  if (!found || found.made === 0) return null;
  const [first] = found.lines;
  return (
    <Card title={words.wandering}>
      {first === undefined ? (
        <p className="soft">{words.wanderingNone(found.made)}</p>
      ) : (
        <p>
          <Most line={first} />
        </p>
      )}
      {found.lines.length > 0 && (
        <p className="soft small">
          {words.wanderingFor(found.markets.map((market) => termWords.market[market]).join(', '))}
        </p>
      )}
      <div className={styles.lines}>
        {found.lines.map((line) => (
          <WanderingLine key={line.itemId} line={line} />
        ))}
      </div>
      <LinkButton to={`/making/by-hand?formula=${formulaId}`}>{words.startAgain}</LinkButton>
    </Card>
  );
}

const HALF = 0.5;

function Most({ line }: { readonly line: Line }) {
  const bound = words.bound[line.bound];
  if (line.used === null) return <State kind="stop">{words.wanderingOver(line.itemName, bound)}</State>;
  const used = Number(line.used);
  return (
    <State kind={used > 1 ? 'stop' : used > HALF ? 'watch' : 'ready'}>
      {used > 0
        ? words.wanderingSays(line.itemName, sayDecimal(String(Math.round(used * 100))), bound)
        : words.wanderingStill}
    </State>
  );
}

const WanderingLine = ({ line }: { readonly line: Line }) => (
  <div className={styles.line}>
    <p>
      <strong>{line.itemName}</strong>{' '}
      <span className="soft">
        {words.mean} {words.percent(line.meanPercent)}, {words.spread.toLowerCase()}{' '}
        {words.percent(line.spreadPercent)}, {words.fromTo(line.leastPercent, line.mostPercent)}
      </span>
    </p>
    <svg
      className={styles.picture}
      viewBox="0 0 100 16"
      preserveAspectRatio="none"
      role="img"
      aria-label={words.picture(
        line.itemName,
        line.leastPercent,
        line.mostPercent,
        line.roomLowPercent,
        line.roomHighPercent,
      )}
    >
      <rect
        x={placePercent(line.roomLowPercent, line)}
        y="2"
        width={placePercent(line.roomHighPercent, line) - placePercent(line.roomLowPercent, line)}
        height="12"
        className={styles.room}
      />
      <line
        x1={placePercent(line.askedPercent, line)}
        x2={placePercent(line.askedPercent, line)}
        y1="0"
        y2="16"
        className={styles.asked}
      />
      {[...new Set(line.shares)].map((share) => (
        <line
          key={share}
          x1={placePercent(share, line)}
          x2={placePercent(share, line)}
          y1="4"
          y2="12"
          className={styles.made}
        />
      ))}
    </svg>
  </div>
);
