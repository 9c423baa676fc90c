import { Fragment } from 'react';
import { exact } from '../../../core/quantity/index.ts';
import { checkWords, cutPercent, sayDecimal } from '../../../words/index.ts';
import { Bar } from '../../parts/bar.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import { State } from '../../parts/state.tsx';
import { Table } from '../../parts/table.tsx';
import styles from './check.module.css';
import type { Check } from './check.ts';
import { closestFirst, shareOfLimit } from './limit-share.ts';
import { QuestionState } from './question-state.tsx';

type Market = Check['markets'][number];
export type Verdict = Market['verdicts'][number];

interface Props {
  readonly market: Market;
  readonly questions: Check['open'];
}

/** Each limited substance as a bar against its limit, the closest first; what has no rule stands quietly below. */
export function LimitTable({ market, questions }: Props) {
  const ruled = closestFirst(market.verdicts.filter((row) => row.verdict !== 'no-rule')).map(
    (row, index) => ({
      ...row,
      key: `${index} ${row.name}`,
    }),
  );
  const unruled = market.verdicts.filter((row) => row.verdict === 'no-rule');
  return (
    <>
      {ruled.length === 0 ? (
        <p className={`soft ${styles.none}`}>{checkWords.noLimits}</p>
      ) : (
        <Table
          caption={checkWords.limits}
          isCaptionHidden
          rows={ruled}
          keyOf={(row) => row.key}
          columns={[
            {
              head: checkWords.substance,
              cell: (row) => (
                <Substance row={row} rules={ruled.filter((other) => other.name === row.name).length} />
              ),
            },
            { head: checkWords.share, cell: (row) => <Share row={row} questions={questions} /> },
            { head: checkWords.decidedBy, cell: (row) => <DecidedBy row={row} /> },
          ]}
        />
      )}
      {market.sumOfShares !== null && (
        <p className={styles.share}>{checkWords.sum(sayDecimal(cutPercent(market.sumOfShares, [1])))}</p>
      )}
      {unruled.length > 0 && (
        <Disclosure title={checkWords.noRule(unruled.length, ruled.length > 0)}>
          {() => <p>{unruled.map((row) => `${row.name} ${cutPercent(row.mostPercent)} %`).join(', ')}</p>}
        </Disclosure>
      )}
    </>
  );
}

/** A substance stands in one line for each rule that it falls under: by whose rule is said beside its name. */
const Substance = ({ row, rules }: { readonly row: Verdict; readonly rules: number }) => (
  <>
    <strong>{row.name}</strong>
    {rules > 1 && <span className="small"> {checkWords.oneRuleOf(ruleOf(row), rules)}</span>}
    <br />
    <span className={`soft small ${styles.detail}`}>
      {checkWords.percentFrom(
        cutPercent(row.typicalPercent, [row.limitPercent]),
        cutPercent(row.mostPercent, [row.limitPercent]),
        row.fromMaterials.join(', '),
      )}
    </span>
  </>
);

const ruleOf = ({ kind }: Verdict): string =>
  kind === null ? checkWords.verdicts.unknown : checkWords.ruleBy[kind];

/** Where nothing is in it, it is within whatever the limit. */
const hasNoLimit = ({ verdict, limitPercent, mostPercent }: Verdict): boolean =>
  verdict === 'within' && limitPercent === null && !exact(mostPercent).isZero();

interface RowProps {
  readonly row: Verdict;
  readonly questions: Check['open'];
}

/** What the same rule asks of the certificate stands below its limit. */
const Share = ({ row, questions }: RowProps) => (
  <div className={styles.share}>
    <OfLimit row={row} questions={questions} />
    {row.certificates.map(({ question }) => (
      <span key={question} className="small">
        {checkWords.certificate}: <QuestionState questions={questions} asked={question} />
      </span>
    ))}
  </div>
);

function OfLimit({ row, questions }: RowProps) {
  if (row.verdict === 'unknown') return <QuestionState questions={questions} asked={row.question} />;
  if (row.limitPercent === null || exact(row.limitPercent).isZero()) {
    return (
      <State kind={row.verdict === 'within' ? 'ready' : 'stop'}>
        {hasNoLimit(row) ? checkWords.noLimitHere : checkWords.verdicts[row.verdict]}
      </State>
    );
  }
  const most = shareOfLimit(row.mostPercent, row.limitPercent);
  return (
    <div className={styles.share}>
      <Bar
        typical={shareOfLimit(row.typicalPercent, row.limitPercent)}
        most={most}
        isOver={row.verdict !== 'within'}
      />
      <span className="small">
        {checkWords.ofLimit(sayDecimal(most), sayDecimal(row.limitPercent))}
        {row.verdict !== 'within' && ` · ${checkWords.verdicts[row.verdict]}`}
      </span>
    </div>
  );
}

const DecidedBy = ({ row }: { readonly row: Verdict }) => (
  <span className="small">
    {row.kind ? checkWords.kinds[row.kind] : checkWords.verdicts.unknown}
    {row.edition !== null && `, ${checkWords.edition(row.edition)}`}
    {row.entry !== null && `, ${checkWords.entry(row.entry)}`}
    {row.confidence === 'memory' && (
      <>
        <br />
        <State kind="watch">{checkWords.fromMemory}</State>
      </>
    )}
    {[row.reason, ...row.certificates.map(({ reason }) => reason)].map(
      (reason) =>
        reason !== null && (
          <Fragment key={reason}>
            <br />
            {reason}
          </Fragment>
        ),
    )}
  </span>
);
