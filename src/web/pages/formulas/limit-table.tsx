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
import { mergeMarkets, type SharedVerdict } from './merge-markets.ts';
import { QuestionState } from './question-state.tsx';

export type Verdict = SharedVerdict;

interface Props {
  readonly check: Check;
}

/** Below a tenth of its limit nothing comes close, and it stands quietly below (common practice, no source). */
const FAR_BELOW = '10';

const isFarBelow = ({ verdict, limitPercent, mostPercent, certificates }: Verdict): boolean =>
  verdict === 'within' &&
  certificates.length === 0 &&
  limitPercent !== null &&
  !exact(limitPercent).isZero() &&
  exact(mostPercent).times(FAR_BELOW).lt(limitPercent);

/** Each limited substance as a bar against its limit, the closest first; what is far below, or has no rule, quietly after. */
export function LimitTable({ check }: Props) {
  const merged = mergeMarkets(check);
  const ruled = closestFirst(merged.filter((row) => row.verdict !== 'no-rule'));
  const measured = ruled.filter(hasMeasure);
  const close = measured.filter((row) => !isFarBelow(row));
  const far = measured.filter(isFarBelow);
  const others = ruled.filter((row) => !hasMeasure(row));
  const unruled = merged.filter((row) => row.verdict === 'no-rule');
  const rows = { check, ruled };
  return (
    <>
      {measured.length === 0 && <p className={`soft ${styles.none}`}>{checkWords.noLimits}</p>}
      {close.length > 0 && <p className={`soft small ${styles.legend}`}>{checkWords.legend}</p>}
      {close.length > 0 && <Rows {...rows} rows={close} />}
      {check.markets.map(
        ({ market, sumOfShares }) =>
          sumOfShares !== null && (
            <p key={market} className={styles.none}>
              {checkWords.phototoxic(checkWords.market[market], sayDecimal(cutPercent(sumOfShares, [1])))}
            </p>
          ),
      )}
      <div className={styles.folded}>
        {far.length > 0 && (
          <Disclosure title={checkWords.farBelow(far.length)}>
            {() => <Rows {...rows} rows={far} />}
          </Disclosure>
        )}
        {others.length > 0 && (
          <Disclosure title={checkWords.noFigure(others.length)}>
            {() => <Rows {...rows} rows={others} />}
          </Disclosure>
        )}
        {unruled.length > 0 && (
          <Disclosure title={checkWords.noRule(unruled.length, ruled.length > 0)}>
            {() => (
              <p>
                {unruled
                  .map((row) => `${row.name} ${cutPercent(row.mostPercent)} %${inWhich(row, check)}`)
                  .join(', ')}
              </p>
            )}
          </Disclosure>
        )}
      </div>
    </>
  );
}

/** A bar can be drawn, or it may not be in it at all; what a rule only asks stands folded, and with the questions. */
const hasMeasure = ({ verdict, limitPercent }: Verdict): boolean =>
  verdict === 'over' || verdict === 'prohibited' || (verdict === 'within' && limitPercent !== null);

/** Where not every market that was asked says so. */
const inWhich = ({ markets }: Verdict, check: Check): string =>
  markets.length === check.markets.length
    ? ''
    : ` (${markets.map((market) => checkWords.market[market]).join(', ')})`;

interface RowsProps extends Props {
  readonly ruled: readonly Verdict[];
  readonly rows: readonly Verdict[];
}

const Rows = ({ check, ruled, rows }: RowsProps) => (
  <Table
    caption={checkWords.limits}
    isCaptionHidden
    rows={rows}
    keyOf={(row) => row.key}
    columns={[
      {
        head: checkWords.substance,
        cell: (row) => <Substance row={row} rules={rulesOn(row, ruled)} markets={inWhich(row, check)} />,
      },
      { head: checkWords.share, cell: (row) => <Share row={row} questions={check.open} /> },
      { head: checkWords.decidedBy, cell: (row) => <DecidedBy row={row} /> },
    ]}
  />
);

/** How many rules of one market speak of the same substance. */
const rulesOn = (row: Verdict, ruled: readonly Verdict[]): number =>
  ruled.filter(
    (other) => other.name === row.name && other.markets.some((market) => row.markets.includes(market)),
  ).length;

interface SubstanceProps {
  readonly row: Verdict;
  readonly rules: number;
  /** ' (Northern Ireland)', or nothing where all say so. */
  readonly markets: string;
}

/** A substance stands in one line for each rule that it falls under: by whose rule is said beside its name. */
const Substance = ({ row, rules, markets }: SubstanceProps) => (
  <>
    <strong>{row.name}</strong>
    {markets}
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
    {row.forUse !== null && ` · ${row.forUse}`}
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
