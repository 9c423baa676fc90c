import { orderWords, sayDate } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { Card } from '../../parts/card.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { Table } from '../../parts/table.tsx';
import { TextLink } from '../../parts/text-link.tsx';
import { showAmount } from '../../show/show-amount.ts';
import styles from './orders.module.css';

export type PromiseView = AnswerOf<'getOrder'>['promise'];
const { promise: words } = orderWords;

/** What stands behind the answer: what may not be made, what is short, and what has to happen until it can go. */
export const PromiseDetail = ({ promise }: { readonly promise: PromiseView }) => (
  <>
    {promise.notForSale.length > 0 && (
      <Card title={words.notForSaleTitle}>
        {promise.notForSale.map((barred) => (
          <Barred key={barred.formulaId} {...barred} />
        ))}
      </Card>
    )}
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
            { head: words.have, cell: (row) => <There {...row} />, isNumber: true },
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
              <Sentence saying={step.what} />{' '}
              {step.when && (
                <span className="soft">
                  (<Sentence saying={step.when} />)
                </span>
              )}{' '}
              {step.action && (
                <TextLink to={step.action.to}>
                  <Sentence saying={step.action.words} />
                </TextLink>
              )}
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

/** What there is for this order, and who the rest is promised to. */
const There = ({ have, onShelf, promisedTo, unit }: ShortRow) =>
  promisedTo.length === 0 || Number(onShelf) <= Number(have) ? (
    showAmount(have, unit)
  ) : (
    <span className={styles.there}>
      {words.ofShelf(
        showAmount(have, unit),
        showAmount(onShelf, unit),
        showAmount(String(Number(onShelf) - Number(have)), unit),
        promisedTo,
      )}
    </span>
  );

const Barred = ({ formulaId, name, number, reasons }: PromiseView['notForSale'][number]) => (
  <>
    <p>
      <State kind="stop">{words.ofRevision(name, number)}</State>
    </p>
    <ul>
      {reasons.map((reason) => (
        <li key={JSON.stringify(reason)}>
          <Sentence saying={reason} />
        </li>
      ))}
    </ul>
    <p>
      <TextLink to={`/formulas/${formulaId}/check`}>{words.seeCheck}</TextLink>
    </p>
  </>
);
