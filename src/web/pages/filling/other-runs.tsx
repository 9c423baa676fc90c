import { otherWords } from '../../../words/index.ts';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { State } from '../../parts/state.tsx';
import styles from './run.module.css';
import type { Run } from './run.ts';

type Other = Run['others'][number];
const KINDS = {
  planned: 'plain',
  filling: 'going',
  closed: 'watch',
  released: 'ready',
  rejected: 'stop',
} as const;

/** Two kinds of tin from one bowl: what is left for each, and over to the other in one tap. */
export function OtherRuns({ run }: { readonly run: Run }) {
  if (run.others.length === 0) return null;
  return (
    <Card title={otherWords.title} aside={otherWords.left(run.bowlLeftGrams)}>
      <ul className={styles.others}>
        <li>
          <span>
            <strong>{run.productName}</strong>{' '}
            <State kind="going">
              {run.state === 'filling' ? otherWords.here : otherWords.states[run.state]}
            </State>
          </span>
          <span className="soft">
            {otherWords.filled(run.summary.filled, run.wanted)}
            {run.state === 'filling' && `, ${otherWords.holds(run.summary.bowlHolds)}`}
          </span>
        </li>
        {run.others.map((other) => (
          <OtherRow key={`${other.productId} ${other.id ?? ''}`} run={run} other={other} />
        ))}
      </ul>
    </Card>
  );
}

const OtherRow = ({ run, other }: { readonly run: Run; readonly other: Other }) => (
  <li>
    <span>
      <strong>{other.productName}</strong>{' '}
      <State kind={KINDS[other.state]}>{otherWords.states[other.state]}</State>
    </span>
    <span className="soft">
      {otherWords.filled(other.filled, other.wanted)}
      {other.state === 'filling' && other.bowlHolds !== null && `, ${otherWords.holds(other.bowlHolds)}`}
    </span>
    <LinkButton isBench to={other.id === null ? `/making/${run.batchId}/fill` : `/filling/${other.id}`}>
      {other.id === null ? otherWords.begin : otherWords.goOn}
    </LinkButton>
  </li>
);
