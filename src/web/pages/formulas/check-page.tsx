import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { type ReactNode, useMemo, useState } from 'react';
import type { Market } from '../../../contract/index.ts';
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
import { judgeTried } from './judge-tried.ts';
import { WriteToSupplier } from './letters-dialog.tsx';
import { LimitTable } from './limit-table.tsx';
import { MemoryCard } from './memory-card.tsx';
import { OpenQuestions } from './open-questions.tsx';
import { questionAnchor } from './question-state.tsx';
import { QuestionSum } from './question-sum.tsx';
import { ReportCard } from './report-card.tsx';
import { ReportLink } from './report-link.tsx';
import { RoomToMove } from './room-to-move.tsx';
import { ShelfAnswers } from './shelf-answers.tsx';
import { draftLines, type TriedLines, TryAmounts } from './try-amounts.tsx';
import type { WantedDraft } from './use-check-facts.ts';
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
  // '': as the workshop asks it, by where it is sold. In the address, so that going back and loading anew keep it.
  const { markets = '' } = useSearch({ from: '/formulas/$id/check' });
  const navigate = useNavigate();
  const read = useRead(
    'checkRevision',
    { params: { id: revision.id }, query: markets === '' ? {} : { markets } },
    { keepsLast: true },
  );
  const [tried, setTried] = useState<TriedLines>(revision.lines);
  const trial = useTrial(formula.id, revision, tried, markets);
  return (
    <Loaded read={read} title={checkWords.title(formula.name)}>
      {(written) => {
        const check = trial === null ? written : trial.check;
        return (
          <Page
            title={checkWords.title(formula.name)}
            says={
              check ? <Sentence saying={check.sentence} /> : <span aria-live="polite">{trial?.says}</span>
            }
            soft={trial ? checkWords.asTyped : checkWords.soft(revision.number)}
            actions={
              <>
                <LinkButton to={`/formulas/${formula.id}`}>{formula.name}</LinkButton>
                <WriteToSupplier of="formula" id={revision.id} />
              </>
            }
          >
            {check && (
              <CheckAnswer
                check={check}
                formulaId={formula.id}
                asked={markets}
                onLookAt={(chosen) =>
                  void navigate({
                    to: '/formulas/$id/check',
                    params: { id: formula.id },
                    search: chosen === '' ? {} : { markets: chosen },
                    resetScroll: false,
                  })
                }
              />
            )}
            {check && <ShelfAnswers shelf={check.shelf} />}
            <CheckView
              check={check}
              formulaId={formula.id}
              isTyped={trial !== null}
              room={
                <RoomToMove
                  revision={revision}
                  markets={markets}
                  draft={trial?.draft ?? null}
                  onTry={(place, grams) =>
                    setTried(tried.map((one, index) => (index === place ? { ...one, grams } : one)))
                  }
                />
              }
            >
              <TryAmounts
                formulaId={formula.id}
                written={revision.lines}
                tried={tried}
                wrong={trial?.wrong ?? []}
                onTry={setTried}
              />
            </CheckView>
          </Page>
        );
      }}
    </Loaded>
  );
}

interface Trial {
  /** undefined: it is not judged. */
  readonly check: Check | undefined;
  /** Why it is not. */
  readonly says: string;
  /** By line, what keeps it from being judged. */
  readonly wrong: ReturnType<typeof judgeTried>;
  readonly draft: WantedDraft;
}

/** null while the amounts are those that are written: then the workshop's own answer stands, and no other time. */
function useTrial(
  formulaId: string,
  revision: Props['revision'],
  tried: TriedLines,
  markets: string,
): Trial | null {
  const wrong = useMemo(() => judgeTried(tried), [tried]);
  const isWrong = wrong.some((each) => each !== undefined);
  const draft = useMemo(
    () => (tried === revision.lines || isWrong ? null : { ...revision.details, lines: draftLines(tried) }),
    [revision, tried, isWrong],
  );
  const asked = useMemo(() => (markets === '' ? [] : (markets.split(',') as Market[])), [markets]);
  const live = useLiveCheck(formulaId, draft, asked);
  if (tried === revision.lines) return null;
  if (isWrong) {
    const names = tried.filter((_, place) => wrong[place] !== undefined).map(({ itemName }) => itemName);
    return { check: undefined, says: checkWords.notJudged(names), wrong, draft };
  }
  if (!live) return { check: undefined, says: checkWords.judging, wrong, draft };
  return live.ok
    ? { check: live.value, says: '', wrong, draft }
    : { check: undefined, says: live.problems.map((each) => sayProblem(each).says).join(' '), wrong, draft };
}

interface AnswerProps {
  readonly check: Check;
  readonly formulaId: string;
  readonly asked: string;
  readonly onLookAt: (markets: string) => void;
}

/** Every market in a line, then what stops it, and what is decided or to be decided. */
const CheckAnswer = ({ check, formulaId, asked, onLookAt }: AnswerProps) => (
  <>
    <CheckMarkets check={check} asked={asked} onChange={onLookAt} />
    <ul className={`${styles.reasons} ${styles.under}`}>
      {check.reasons
        .filter(({ code }) => !code.startsWith('sale-unknown'))
        .map((reason) => (
          <li key={JSON.stringify(reason)}>
            <State kind={reason.code === 'sale-report-review-close' ? 'watch' : 'stop'}>
              <Sentence saying={reason} /> <ReportLink code={reason.code} formulaId={formulaId} />
            </State>
          </li>
        ))}
      <QuestionSum
        questions={check.open}
        hrefOf={(question) => (question ? `#${questionAnchor(check.open, question.key)}` : '#questions')}
      />
    </ul>
  </>
);

interface ViewProps {
  /** undefined: what is typed is not judged. */
  readonly check: Check | undefined;
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
      {check ? (
        <Figures check={check} formulaId={formulaId} isTyped={isTyped} />
      ) : (
        <p className="soft">{checkWords.notJudgedMore}</p>
      )}
    </div>
    <div className={styles.column}>
      <div className={styles.first}>{children}</div>
      {check && (
        <>
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
              <ul className={`small ${styles.cautions}`}>
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
        </>
      )}
      <p className="soft small">{checkWords.advice}</p>
    </div>
  </div>
);

interface FiguresProps {
  readonly check: Check;
  readonly formulaId: string;
  readonly isTyped: boolean;
}

const Figures = ({ check, formulaId, isTyped }: FiguresProps) => (
  <>
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
    <OpenQuestions check={check} isTyped={isTyped} />
  </>
);
