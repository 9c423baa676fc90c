import { orderWords, sayDate, sayInstant } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useTimeZone } from '../../api/use-time-zone.ts';
import { Card } from '../../parts/card.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { Table } from '../../parts/table.tsx';
import { sayRange } from '../../show/say-range.ts';
import { showAmount } from '../../show/show-amount.ts';
import styles from './orders.module.css';

export type PromiseView = AnswerOf<'previewPromise'>;
const { promise: words } = orderWords;

/** What stands behind the answer: what is short, and what has to happen until it can go. */
export const PromiseDetail = ({ promise }: { readonly promise: PromiseView }) => (
  <>
    {promise.short.length > 0 && (
      <Card title={words.shortTitle} isFlush>
        <Table
          caption={words.shortTitle}
          isCaptionHidden
          rows={promise.short}
          keyOf={({ itemId }) => itemId}
          columns={[
            { head: words.item, cell: (row) => <ShortItem {...row} /> },
            { head: words.need, cell: ({ need, unit }) => showAmount(need, unit), isNumber: true },
            { head: words.have, cell: ({ have, unit }) => showAmount(have, unit), isNumber: true },
            {
              head: words.short,
              cell: ({ short, unit }) => <strong>{showAmount(short, unit)}</strong>,
              isNumber: true,
            },
          ]}
        />
      </Card>
    )}
    {promise.steps.length > 0 && (
      <Card title={words.stepsTitle}>
        <ol className={styles.steps}>
          {promise.steps.map((step) => (
            <li key={JSON.stringify(step)}>
              <Sentence saying={step.what} /> <StepTime from={step.from} to={step.to} />
            </li>
          ))}
        </ol>
      </Card>
    )}
  </>
);

type ShortRow = PromiseView['short'][number];

/** What is short, and that it need not be ordered again. */
const ShortItem = ({ name, onItsWay }: Pick<ShortRow, 'name' | 'onItsWay'>) => (
  <>
    {name}
    {onItsWay && (
      <>
        {' '}
        <State kind="going">
          {words.onItsWay(onItsWay.expectedOn === null ? null : sayDate(onItsWay.expectedOn))}
        </State>
      </>
    )}
  </>
);

function StepTime({ from, to }: { readonly from: string | null; readonly to: string | null }) {
  const timeZone = useTimeZone();
  const clock = (instant: string) => sayInstant(instant, timeZone);
  if (from !== null && to !== null) return <span className="soft">{sayRange(from, to, timeZone)}</span>;
  if (to !== null) return <span className="soft">{words.by(clock(to))}</span>;
  return from === null ? null : <span className="soft">{words.after(clock(from))}</span>;
}
