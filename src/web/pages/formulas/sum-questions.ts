import type { Question } from './question-state.tsx';

export interface QuestionsSummed {
  readonly open: readonly Question[];
  readonly refused: readonly Question[];
  readonly accepted: readonly Question[];
  /** Who accepted them, each once. */
  readonly acceptedBy: readonly string[];
}

/** Questions by what became of them. */
export function sumQuestions(questions: readonly Question[]): QuestionsSummed {
  const decidedAs = (verdict: string) => questions.filter(({ decided }) => decided?.verdict === verdict);
  const accepted = decidedAs('accepted');
  return {
    open: questions.filter(({ decided }) => decided === null),
    refused: decidedAs('refused'),
    accepted,
    acceptedBy: [...new Set(accepted.flatMap(({ decided }) => decided?.by ?? []))],
  };
}
