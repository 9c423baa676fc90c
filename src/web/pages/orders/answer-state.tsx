import { orderWords } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { State, type StateKind } from '../../parts/state.tsx';

type Answer = AnswerOf<'previewPromise'>['answer'];

const KIND: Readonly<Record<Answer, StateKind>> = {
  yes: 'ready',
  no: 'stop',
  'not-known': 'watch',
  sent: 'plain',
  cancelled: 'plain',
};

export const AnswerState = ({ answer }: { readonly answer: Answer }) => (
  <State kind={KIND[answer]}>{orderWords.answer[answer]}</State>
);
