import { orderWords, sayDate } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { State, type StateKind } from '../../parts/state.tsx';

type Promised = Pick<AnswerOf<'previewPromise'>, 'answer' | 'orderBy'>;

const KIND: Readonly<Record<Promised['answer'], StateKind>> = {
  yes: 'ready',
  'if-ordered': 'watch',
  no: 'stop',
  'not-for-sale': 'stop',
  'not-known': 'watch',
  sent: 'plain',
  cancelled: 'plain',
};

export const AnswerState = ({ promise: { answer, orderBy } }: { readonly promise: Promised }) => (
  <State kind={KIND[answer]}>
    {answer === 'if-ordered' && orderBy !== null
      ? orderWords.ifOrderedBy(sayDate(orderBy))
      : orderWords.answer[answer]}
  </State>
);
