import { Fragment } from 'react';
import { checkWords } from '../../../words/index.ts';
import { State } from '../../parts/state.tsx';
import type { Question } from './question-state.tsx';
import { sumQuestions } from './sum-questions.ts';

interface Props {
  readonly questions: readonly Question[];
  /** Where a question can be read and decided; without one, where all of them stand. */
  readonly hrefOf: (question?: Question) => string;
}

/** What somebody has to decide, or has decided, in a line or two: each of it leads to its card. */
export function QuestionSum({ questions, hrefOf }: Props) {
  const { open, refused, accepted, acceptedBy } = sumQuestions(questions);
  const links = (some: readonly Question[]) =>
    some.map((question, index) => (
      <Fragment key={question.key}>
        {index > 0 && '; '}
        <a href={hrefOf(question)}>{question.what}</a>
      </Fragment>
    ));
  return (
    <>
      {refused.length > 0 && (
        <li>
          <State kind="stop">
            {checkWords.sum.refused} {links(refused)}.
          </State>
        </li>
      )}
      {open.length > 0 && (
        <li>
          <State kind="watch">
            {checkWords.sum.open(open.length)} {links(open)}.
          </State>
        </li>
      )}
      {accepted.length > 0 && (
        <li>
          <State kind="ready">
            <a href={hrefOf()}>
              {checkWords.sum.accepted(accepted.length, open.length + refused.length > 0, acceptedBy)}
            </a>
          </State>
        </li>
      )}
    </>
  );
}
