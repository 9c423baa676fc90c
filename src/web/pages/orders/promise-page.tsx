import type { ReactNode } from 'react';
import type { Problem } from '../../../core/problem.ts';
import { orderWords } from '../../../words/index.ts';
import { problemsOf } from '../../api/problems-of.ts';
import { useRead } from '../../api/use-read.ts';
import { useSettled } from '../../api/use-settled.ts';
import { Card } from '../../parts/card.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { Page } from '../../shell/page.tsx';
import { AnswerState } from './answer-state.tsx';
import { type OrderDraft, readOrderDraft } from './order-draft.ts';
import { PromiseDetail } from './promise-detail.tsx';

const NONE: readonly Problem[] = [];

interface Props {
  readonly title: string;
  readonly draft: OrderDraft;
  /** The order that is being changed: it does not compete with itself. */
  readonly orderId?: string;
  /** The form, with what the answer finds wrong in it: a field has one place for what is wrong. */
  readonly children: (found: readonly Problem[]) => ReactNode;
}

/** The answer to an order while it is being typed: the same computation as for an order that is kept. */
export function PromisePage({ title, draft, orderId, children }: Props) {
  const read = readOrderDraft(useSettled(draft));
  const isComplete = read.ok;
  const body = read.ok
    ? { wantedBy: read.value.wantedBy, lines: read.value.lines, ...(orderId && { orderId }) }
    : undefined;
  const promise = useRead('previewPromise', body ? { body } : {}, { isWanted: isComplete, keepsLast: true });
  const answer = isComplete ? promise.data : undefined;
  const found = isComplete && promise.error ? problemsOf(promise.error) : NONE;
  return (
    <Page
      title={title}
      above={
        <>
          {title}
          {answer && ' · '}
          {answer && <AnswerState promise={answer} />}
        </>
      }
      says={
        <span aria-live="polite">
          {answer ? (
            <Sentence saying={answer.sentence} />
          ) : isComplete ? (
            orderWords.promise.asking
          ) : (
            orderWords.promise.waiting
          )}
        </span>
      }
    >
      <Card>{children(found)}</Card>
      {answer && answer.makesLate.length > 0 && (
        <p>
          <State kind="watch">{orderWords.promise.makesLate(answer.makesLate)}</State>
        </p>
      )}
      {answer && <PromiseDetail promise={answer} />}
    </Page>
  );
}
