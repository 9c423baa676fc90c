import { useState } from 'react';
import { checkWords } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import { List } from '../../parts/list.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import styles from './check.module.css';
import type { Check } from './check.ts';
import { DecideQuestion } from './decide-question.tsx';
import { findFormer } from './find-former.ts';
import { FormerlyDecided } from './formerly-decided.tsx';
import { type Question, questionAnchor } from './question-state.tsx';
import { SaidDecision } from './said-decision.tsx';

interface ListProps {
  readonly check: Check;
  /** Of what is typed and not written nothing can be decided. */
  readonly isTyped: boolean;
}

/** What no source tells: each is decided once for this revision, by a named person with a reason. */
export function OpenQuestions({ check, isTyped }: ListProps) {
  const [asked, setAsked] = useState<Question | null>(null);
  const isAsked = [...check.open, ...check.lotQuestions].some(({ decided }) => decided === null);
  const former =
    useRead('listFormerDecisions', { params: { id: check.revisionId } }, { isWanted: isAsked }).data ?? [];
  return (
    <>
      <Card title={checkWords.open} anchor="questions" isFlush>
        <List rows={check.open} keyOf={(question) => question.key} empty={checkWords.noneOpen}>
          {(question) => (
            <div id={questionAnchor(check.open, question.key)} className={styles.question}>
              <QuestionView
                question={question}
                former={former}
                onDecide={isTyped ? null : () => setAsked(question)}
              />
            </div>
          )}
        </List>
      </Card>
      {check.lotQuestions.length > 0 && (
        <Card title={checkWords.ofLots} isFlush>
          <p className={`soft small ${styles.intro}`}>{checkWords.ofLotsSays}</p>
          <List rows={check.lotQuestions} keyOf={(question) => question.key} empty="">
            {(question) => (
              <div className={styles.question}>
                <p className="small">{checkWords.ofLot(question.material, question.lots.join(', '))}</p>
                <QuestionView
                  question={question}
                  former={former}
                  onDecide={isTyped ? null : () => setAsked(question)}
                />
              </div>
            )}
          </List>
        </Card>
      )}
      {asked && (
        <DecideQuestion
          key={asked.key}
          revisionId={check.revisionId}
          question={asked}
          former={former}
          onClose={() => setAsked(null)}
        />
      )}
    </>
  );
}

interface Props {
  readonly question: Question;
  readonly former: AnswerOf<'listFormerDecisions'>;
  /** null: not now. */
  readonly onDecide: (() => void) | null;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const QuestionView = ({ question, former, onDecide }: Props) => (
  <>
    <ListRow>
      <span>{capital(question.what)}</span>
      {question.decided ? (
        <State kind={question.decided.verdict === 'accepted' ? 'ready' : 'stop'}>
          {checkWords.decided(question.decided.verdict, question.decided.by)}
        </State>
      ) : (
        <State kind="watch">{checkWords.verdicts.unknown}</State>
      )}
    </ListRow>
    {question.decided ? (
      <Disclosure title={checkWords.whatWasDecided}>
        {() => <QuestionBody question={question} former={former} onDecide={onDecide} />}
      </Disclosure>
    ) : (
      <QuestionBody question={question} former={former} onDecide={onDecide} />
    )}
  </>
);

/** What is asked and why, what was said to it so far, and the means to decide. */
const QuestionBody = ({ question, former, onDecide }: Props) => (
  <>
    <p className="soft small">
      <Sentence saying={question.why} /> (
      {question.markets.map((market) => checkWords.market[market]).join(', ')})
    </p>
    {question.decided && (
      <p className="small">
        <SaidDecision decision={question.decided} />
      </p>
    )}
    {question.lapsed && <Lapsed decision={question.lapsed} />}
    {!question.decided && <FormerlyDecided decisions={findFormer(question, former)} />}
    {question.earlier.length > 0 && <Earlier decisions={question.earlier} />}
    {onDecide && (
      <ListFoot>
        <span />
        <Button
          label={
            question.decided
              ? checkWords.changeTitle(question.substance)
              : checkWords.decideTitle(question.substance)
          }
          onPress={onDecide}
        >
          {question.decided ? checkWords.change : checkWords.decide}
        </Button>
      </ListFoot>
    )}
  </>
);

const Earlier = ({ decisions }: { readonly decisions: Question['earlier'] }) => (
  <Disclosure title={checkWords.earlier(decisions.length)}>
    {() => (
      <ul>
        {decisions.map((decision) => (
          <li key={decision.entryId} className="small">
            <SaidDecision decision={decision} />
          </li>
        ))}
      </ul>
    )}
  </Disclosure>
);

const Lapsed = ({
  decision: { verdict, by, at, reason },
}: {
  readonly decision: NonNullable<Question['lapsed']>;
}) => (
  <p className="small">
    <Sentence saying={{ code: 'decision-lapsed', parameters: { verdict, by, on: at, reason } }} />
  </p>
);
