import { useParams } from '@tanstack/react-router';
import { type ReactNode, useMemo, useState } from 'react';
import type { Market } from '../../../contract/index.ts';
import type { Problem } from '../../../core/problem.ts';
import { answerWords, checkWords, formulaWords, sayProblem } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { Page } from '../../shell/page.tsx';
import { Origins } from '../answers/answers-card.tsx';
import styles from './check.module.css';
import type { Check } from './check.ts';
import { CheckMarkets } from './check-markets.tsx';
import type { Formula } from './formula.ts';
import { WriteToSupplier } from './letters-dialog.tsx';
import { LimitTable } from './limit-table.tsx';
import { MemoryCard } from './memory-card.tsx';
import { OpenQuestions } from './open-questions.tsx';
import { ReportCard } from './report-card.tsx';
import { ReportLink } from './report-link.tsx';
import { RoomToMove } from './room-to-move.tsx';
import { ShelfAnswers } from './shelf-answers.tsx';
import { draftLines, type TriedLines, TryAmounts } from './try-amounts.tsx';
import { useLiveCheck } from './use-live-check.ts';

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
  const [tried, setTried] = useState<TriedLines>(revision.lines);
  const live = useTried(formula.id, revision, tried, markets);
  return (
    <Loaded read={read} title={checkWords.title(formula.name)}>
      {(written) => {
        const check = live?.ok ? live.value : written;
        return (
          <Page
            title={checkWords.title(formula.name)}
            says={<Sentence saying={check.sentence} />}
            soft={live?.ok ? checkWords.asTyped : checkWords.soft(revision.number)}
            actions={
              <>
                <LinkButton to={`/formulas/${formula.id}`}>{formula.name}</LinkButton>
                <WriteToSupplier of="formula" id={revision.id} />
              </>
            }
          >
            <CheckMarkets check={check} asked={markets} onChange={setMarkets} />
            <ShelfAnswers shelf={check.shelf} />
            {live && !live.ok && <TriedProblems problems={live.problems} />}
            <CheckView
              check={check}
              formulaId={formula.id}
              isTyped={live?.ok ?? false}
              room={
                <RoomToMove
                  revision={revision}
                  markets={markets}
                  isTrying={tried !== revision.lines}
                  onTry={(place, grams) =>
                    setTried(revision.lines.map((one, index) => (index === place ? { ...one, grams } : one)))
                  }
                />
              }
            >
              <TryAmounts formulaId={formula.id} written={revision.lines} tried={tried} onTry={setTried} />
            </CheckView>
          </Page>
        );
      }}
    </Loaded>
  );
}

/** undefined while the amounts are those that are written: then the workshop's own answer stands. */
function useTried(formulaId: string, revision: Props['revision'], tried: TriedLines, markets: string) {
  const draft = useMemo(
    () => (tried === revision.lines ? null : { ...revision.details, lines: draftLines(tried) }),
    [revision, tried],
  );
  const asked = useMemo(() => (markets === '' ? [] : (markets.split(',') as Market[])), [markets]);
  return useLiveCheck(formulaId, draft, asked);
}

/** Read out without taking the focus from the field that is being typed in. */
const TriedProblems = ({ problems }: { readonly problems: readonly Problem[] }) => (
  <p role="status">
    <State kind="watch">{problems.map((each) => sayProblem(each).says).join(' ')}</State>
  </p>
);

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
  /** Not written yet: then there is nothing to decide upon. */
  readonly isTyped: boolean;
  readonly room: ReactNode;
  /** First beside the limits. */
  readonly children: ReactNode;
}

const CheckView = ({ check, formulaId, isTyped, room, children }: ViewProps) => (
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
      <Card title={checkWords.limits} isFlush>
        <LimitTable check={check} />
      </Card>
      <Card title={checkWords.onLabel}>
        {check.markets.map((market) => (
          <p key={market.market}>
            <strong>{checkWords.market[market.market]}:</strong>{' '}
            {checkWords.names(market.named.map((name) => name.labelName).join(', '))}
          </p>
        ))}
      </Card>
      <ReportCard check={check} formulaId={formulaId} />
    </div>
    <div className={styles.column}>
      <div className={styles.first}>{children}</div>
      {room}
      <Card title={answerWords.title}>
        <Origins origins={check.origins} />
        <p className="soft small">{answerWords.traces}</p>
      </Card>
      <Card title={checkWords.water}>
        {check.water.says.map((saying) => (
          <p key={saying.code}>
            <Sentence saying={saying} />
          </p>
        ))}
        {check.water.cautions.length > 0 && (
          <ul className="small">
            {check.water.cautions.map((saying) => (
              <li key={JSON.stringify(saying)}>
                <Sentence saying={saying} />
              </li>
            ))}
          </ul>
        )}
        <p className="soft small">{checkWords.waterSaid}</p>
      </Card>
      <MemoryCard check={check} />
      <OpenQuestions check={check} isTyped={isTyped} />
      <p className="soft small">{checkWords.advice}</p>
    </div>
  </div>
);
