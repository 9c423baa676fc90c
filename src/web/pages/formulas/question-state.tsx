import { checkWords } from '../../../words/index.ts';
import { State } from '../../parts/state.tsx';
import type { Check } from './check.ts';

export type Question = Check['open'][number];

/** Where on the page a question stands. */
export const questionAnchor = (questions: readonly Question[], key: string): string =>
  `question-${questions.findIndex((question) => question.key === key) + 1}`;

interface Props {
  readonly questions: readonly Question[];
  /** Key of the question; null: none is asked. */
  readonly asked: string | null;
}

/** What became of a question, leading to it: accepted or refused by whom, else not known. */
export function QuestionState({ questions, asked }: Props) {
  const question = questions.find(({ key }) => key === asked);
  if (!question) return <State kind="watch">{checkWords.verdicts.unknown}</State>;
  const { decided } = question;
  return (
    <State kind={decided === null ? 'watch' : decided.verdict === 'accepted' ? 'ready' : 'stop'}>
      <a href={`#${questionAnchor(questions, question.key)}`}>
        {decided === null ? checkWords.verdicts.unknown : checkWords.decided(decided.verdict, decided.by)}
      </a>
    </State>
  );
}
