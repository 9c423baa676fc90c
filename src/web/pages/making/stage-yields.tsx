import { sayGrams, sayNumber, stepWords } from '../../../words/index.ts';
import { Card } from '../../parts/card.tsx';
import { Table } from '../../parts/table.tsx';
import type { Batch } from './batch.ts';
import styles from './stage-yields.module.css';

type Yield = Batch['yields'][number];
const { yields: words } = stepWords;

/** What each stage left behind: bars of what there was, the lost part light, and the same as a table. */
export function StageYields({ yields }: { readonly yields: readonly Yield[] }) {
  if (yields.length === 0) return null;
  const most = Math.max(
    ...yields.map((each) => Math.max(Number(each.expectedGrams), Number(each.foundGrams))),
  );
  const placed = yields.map((each, place) => ({ ...each, place }));
  return (
    <Card title={words.title}>
      <p className="soft">{words.soft}</p>
      <ul className={styles.bars}>
        {placed.map((each) => (
          <Bar key={each.place} stage={each} most={most} />
        ))}
      </ul>
      <Table
        caption={words.title}
        isCaptionHidden
        rows={placed}
        keyOf={(row) => String(row.place)}
        columns={[
          { head: words.stage, cell: (row) => row.name },
          { head: words.expected, cell: (row) => sayGrams(row.expectedGrams), isNumber: true },
          { head: words.found, cell: (row) => sayGrams(row.foundGrams), isNumber: true },
          { head: words.loss, cell: (row) => sayGrams(row.lossGrams.replace('-', '\u2212')), isNumber: true },
          { head: '%', cell: (row) => sayNumber(Number(row.lossPercent), 1), isNumber: true },
        ]}
      />
    </Card>
  );
}

function Bar({ stage, most }: { readonly stage: Yield; readonly most: number }) {
  const [found, expected] = [Number(stage.foundGrams), Number(stage.expectedGrams)];
  const percent = sayNumber(Number(stage.lossPercent), 1);
  return (
    <li>
      <span>{stage.name}</span>
      <span
        className={styles.bar}
        role="img"
        aria-label={words.barOf(stage.name, sayGrams(stage.foundGrams), sayGrams(stage.lossGrams), percent)}
      >
        <i className={styles.found} style={{ width: `${(100 * found) / most}%` }} />
        <i className={styles.lost} style={{ width: `${(100 * Math.max(0, expected - found)) / most}%` }} />
      </span>
    </li>
  );
}
