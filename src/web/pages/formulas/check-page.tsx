import { useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { checkWords, formulaWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { Page } from '../../shell/page.tsx';
import styles from './check.module.css';
import type { Check } from './check.ts';
import { CheckMarkets } from './check-markets.tsx';
import type { Formula } from './formula.ts';
import { LimitTable } from './limit-table.tsx';
import { OpenQuestions } from './open-questions.tsx';
import { ReportCard } from './report-card.tsx';
import { ReportLink } from './report-link.tsx';

export function CheckPage() {
  const { id } = useParams({ from: '/formulas/$id/check' });
  return (
    <Loaded read={useRead('getFormula', { params: { id } })} title={formulaWords.title}>
      {(formula) => (formula.latest ? <CheckOf formula={formula} revision={formula.latest} /> : null)}
    </Loaded>
  );
}

interface Props {
  readonly formula: Formula;
  readonly revision: NonNullable<Formula['latest']>;
}

function CheckOf({ formula, revision }: Props) {
  // '': as the workshop asks it, by where it is sold.
  const [markets, setMarkets] = useState('');
  const read = useRead(
    'checkRevision',
    { params: { id: revision.id }, query: markets === '' ? {} : { markets } },
    { keepsLast: true },
  );
  return (
    <Loaded read={read} title={checkWords.title(formula.name)}>
      {(check) => (
        <Page
          title={checkWords.title(formula.name)}
          says={<Sentence saying={check.sentence} />}
          soft={checkWords.soft(revision.number)}
          actions={<LinkButton to={`/formulas/${formula.id}`}>{formula.name}</LinkButton>}
        >
          <CheckMarkets check={check} asked={markets} onChange={setMarkets} />
          <CheckView check={check} formulaId={formula.id} />
        </Page>
      )}
    </Loaded>
  );
}

/** What only has to be decided, or seen, does not look like what stops it. */
const STATES: Readonly<Record<string, 'ready' | 'watch'>> = {
  'sale-unknown': 'watch',
  'sale-unknown-lapsed': 'watch',
  'sale-unknown-accepted': 'ready',
  'sale-report-review-close': 'watch',
};

interface ViewProps {
  readonly check: Check;
  readonly formulaId: string;
}

const CheckView = ({ check, formulaId }: ViewProps) => (
  <div className={styles.columns}>
    <div className={styles.column}>
      {check.reasons.length > 0 && (
        <ul className={styles.reasons}>
          {check.reasons.map((reason) => (
            <li key={JSON.stringify(reason)}>
              <State kind={STATES[reason.code] ?? 'stop'}>
                <Sentence saying={reason} /> <ReportLink code={reason.code} formulaId={formulaId} />
              </State>
            </li>
          ))}
        </ul>
      )}
      {check.markets.map((market) => (
        <Card
          key={market.market}
          title={`${checkWords.market[market.market]}: ${checkWords.limits.toLowerCase()}`}
          isFlush
        >
          <LimitTable market={market} questions={check.open} />
        </Card>
      ))}
    </div>
    <div className={styles.column}>
      <OpenQuestions check={check} />
      <Card title={checkWords.onLabel}>
        {check.markets.map((market) => (
          <p key={market.market}>
            <strong>{checkWords.market[market.market]}:</strong>{' '}
            {checkWords.names(market.named.map((name) => name.labelName).join(', '))}
          </p>
        ))}
      </Card>
      <ReportCard check={check} formulaId={formulaId} />
      <p className="soft small">{checkWords.advice}</p>
    </div>
  </div>
);
