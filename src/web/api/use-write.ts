import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { z } from 'zod';
import { type RouteName, routes } from '../../contract/index.ts';
import type { Problem } from '../../core/problem.ts';
import { ApiProblem } from './api-problem.ts';
import { call } from './call.ts';
import { makeSender, type Unstamped } from './make-sender.ts';
import { stampNow } from './make-stamp.ts';
import { problemsOf } from './problems-of.ts';
import type { AnswerOf, RequestOf, WriteOf } from './shapes.ts';
import type { UnderWay } from './unsaved.ts';

const NONE: readonly Problem[] = [];

const isStamped = (name: RouteName): boolean => {
  const { input } = routes[name];
  return input instanceof z.ZodObject && 'stamp' in input.shape;
};

function senderOf<Name extends RouteName>(name: Name): (request: Unstamped) => Promise<AnswerOf<Name>> {
  const send = (request: object) => call(name, request as RequestOf<Name>);
  return isStamped(name) ? makeSender({ send, stamp: stampNow }) : send;
}

export interface Write<Name extends RouteName> {
  /** Answers undefined where it was refused: `problems` then says why. */
  readonly write: (request: WriteOf<Name>) => Promise<AnswerOf<Name> | undefined>;
  readonly isBusy: boolean;
  /** The write that is on its way, if one is: whether it was kept. The same function in every render. */
  readonly underWay: UnderWay;
  readonly problems: readonly Problem[];
  /** Shows problems that the page itself found before sending. */
  readonly refuse: (problems: readonly Problem[]) => void;
  readonly forget: () => void;
}

/** One kind of write for one form. After success everything on the pages is asked anew. */
export function useWrite<Name extends RouteName>(name: Name): Write<Name> {
  const queryClient = useQueryClient();
  const [sendEntry] = useState(() => senderOf(name));
  const [problems, setProblems] = useState(NONE);
  const mutation = useMutation({ mutationFn: (request: Unstamped) => sendEntry(request) });

  /** Pressed twice counts once; the state below is a moment too late for a quick thumb. */
  const isSending = useRef(false);
  const sending = useRef<Promise<boolean>>(undefined);
  const [underWay] = useState((): UnderWay => () => sending.current);

  async function write(request: WriteOf<Name>): Promise<AnswerOf<Name> | undefined> {
    if (isSending.current) return undefined;
    isSending.current = true;
    const written = send(request);
    const isKept = written.then((answer) => answer !== undefined);
    sending.current = isKept;
    const answer = await written;
    // The next may have begun while the pages were asked anew.
    if (sending.current === isKept) sending.current = undefined;
    return answer;
  }

  async function send(request: WriteOf<Name>): Promise<AnswerOf<Name> | undefined> {
    setProblems(NONE);
    try {
      const answer = await mutation.mutateAsync(request as Unstamped);
      isSending.current = false;
      await queryClient.invalidateQueries();
      return answer;
    } catch (error) {
      isSending.current = false;
      setProblems(problemsOf(error));
      // What the refusal was about may have changed under the page: it shows how things stand now.
      if (error instanceof ApiProblem && error.isAnswered) void queryClient.invalidateQueries();
      return undefined;
    }
  }
  return {
    write,
    isBusy: mutation.isPending,
    underWay,
    problems,
    refuse: setProblems,
    forget: () => setProblems(NONE),
  };
}
