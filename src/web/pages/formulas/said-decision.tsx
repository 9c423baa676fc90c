import { Sentence } from '../../parts/sentence.tsx';
import type { Question } from './question-state.tsx';

type Decision = NonNullable<Question['decided']>;

/** Who decided what, when and why. */
export const SaidDecision = ({ decision: { verdict, by, at, reason } }: { readonly decision: Decision }) => (
  <Sentence saying={{ code: 'decision-said', parameters: { verdict, by, on: at, reason } }} />
);
