import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { Problem } from '../../core/problem.ts';
import { call } from '../api/call.ts';
import { makeStamp } from '../api/make-stamp.ts';
import { problemsOf } from '../api/problems-of.ts';
import { door } from '../away/door.ts';
import { replayOutbox } from '../away/outbox.ts';

const NONE: readonly Problem[] = [];

/** Says by a PIN who works here. Whoever is meant signs it themselves, be it that somebody else was working until now. */
export function useUnlock() {
  const queryClient = useQueryClient();
  const [problems, setProblems] = useState(NONE);
  const [isBusy, setBusy] = useState(false);

  async function ask(work: () => Promise<unknown>): Promise<boolean> {
    if (isBusy) return false;
    setBusy(true);
    setProblems(NONE);
    try {
      await work();
      await queryClient.invalidateQueries();
      return true;
    } catch (error) {
      setProblems(problemsOf(error));
      return false;
    } finally {
      setBusy(false);
    }
  }

  const unlock = (personId: string, pin: string) =>
    ask(async () => {
      await call('unlockPerson', { body: { stamp: makeStamp(personId), pin } });
      door.write(null);
      // What waited for a PIN goes now.
      void replayOutbox();
    });
  const lock = (personId: string) => ask(() => call('lockPerson', { body: { stamp: makeStamp(personId) } }));
  return { unlock, lock, problems, isBusy, forget: () => setProblems(NONE) };
}
