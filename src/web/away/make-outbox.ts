import type { Problem } from '../../core/problem.ts';
import { ApiProblem } from '../api/api-problem.ts';
import { shutDoor } from './door.ts';
import type { KeptEntry } from './kept-entry.ts';
import type { OutboxStore } from './outbox-store.ts';

/** What became of an entry, as whoever stands before the screen is told. */
export type Entered =
  | { readonly how: 'answered' }
  | { readonly how: 'kept' }
  | { readonly how: 'refused'; readonly problems: readonly Problem[] };

/** Why the rest of the outbox still lies here. */
export type Rest = 'empty' | 'silent' | 'door' | 'other-tab';

export interface OutboxParts {
  readonly store: () => Promise<OutboxStore>;
  /** Sends with the entry's own stamp; throws an ApiProblem where it is refused or nobody answers. */
  readonly send: (entry: KeptEntry) => Promise<unknown>;
  /** Puts what was refused on the record, to be asked about: nothing is thrown away. */
  readonly claim: (entry: KeptEntry, problems: readonly Problem[]) => Promise<unknown>;
  /** One after the other, in all tabs of this browser. */
  readonly alone: <T>(work: () => Promise<T>) => Promise<T>;
  readonly tab: string;
  readonly now: () => number;
  readonly wait: (ms: number) => Promise<undefined>;
  /** How long somebody stands before the screen until the entry counts as kept here. */
  readonly patienceMs: number;
  /** The outbox changed; `sent`: this entry has arrived just now. */
  readonly onChange: (sent?: KeptEntry) => void;
}

export interface Outbox {
  /** Keeps the entry on this tablet, then sends everything in order. */
  readonly enter: (entry: Omit<KeptEntry, 'state' | 'tab' | 'until'>) => Promise<Entered>;
  /** Sends what lies here, the oldest first, until nothing does or nobody answers. */
  readonly replay: () => Promise<Rest>;
}

type Waiter = (entered: Entered) => void;

export function makeOutbox(parts: OutboxParts): Outbox {
  const waiters = new Map<string, Waiter>();
  const answer = (id: string, entered: Entered): boolean => {
    const waiter = waiters.get(id);
    waiters.delete(id);
    waiter?.(entered);
    return waiter !== undefined;
  };

  async function takeOut(store: OutboxStore, entry: KeptEntry, isSent: boolean): Promise<'gone'> {
    await store.remove(entry.id);
    parts.onChange(isSent ? entry : undefined);
    return 'gone';
  }

  async function sendOne(store: OutboxStore, entry: KeptEntry): Promise<'gone' | 'silent' | 'door'> {
    try {
      await parts.send(entry);
    } catch (error) {
      if (!(error instanceof ApiProblem)) throw error;
      return refuseOne(store, entry, error);
    }
    const gone = await takeOut(store, entry, true);
    answer(entry.id, { how: 'answered' });
    return gone;
  }

  async function refuseOne(
    store: OutboxStore,
    entry: KeptEntry,
    { isAnswered, problems }: ApiProblem,
  ): Promise<'gone' | 'silent' | 'door'> {
    if (!isAnswered) return 'silent';
    if (shutDoor(problems)) return 'door';
    if (waiters.has(entry.id)) {
      const gone = await takeOut(store, entry, false);
      answer(entry.id, { how: 'refused', problems });
      return gone;
    }
    try {
      await parts.claim(entry, problems);
    } catch (error) {
      if (!(error instanceof ApiProblem)) throw error;
      // The record could not be told either: the entry stays here, and is tried again.
      return shutDoor(error.problems) ? 'door' : 'silent';
    }
    return takeOut(store, entry, false);
  }

  /** Whoever stands before another tab gets the answer there. */
  const isAskedElsewhere = (entry: KeptEntry): boolean =>
    entry.state === 'asked' && entry.tab !== parts.tab && parts.now() < entry.until;

  async function sendAll(): Promise<Rest> {
    const store = await parts.store();
    for (;;) {
      const entry = await store.first();
      if (!entry) return 'empty';
      if (isAskedElsewhere(entry)) return 'other-tab';
      const outcome = await sendOne(store, entry);
      if (outcome !== 'gone') return outcome;
    }
  }

  const replay = (): Promise<Rest> => parts.alone(sendAll);

  async function leave(store: OutboxStore, id: string): Promise<Entered> {
    waiters.delete(id);
    await store.leave(id);
    parts.onChange();
    return { how: 'kept' };
  }

  return {
    replay,
    async enter(given) {
      const store = await parts.store();
      const until = parts.now() + parts.patienceMs;
      const entry: KeptEntry = { ...given, state: 'asked', tab: parts.tab, until };
      const answered = new Promise<Entered>((resolve) => waiters.set(entry.id, resolve));
      try {
        await store.add(entry);
      } catch (error) {
        waiters.delete(entry.id);
        throw error;
      }
      parts.onChange();
      const sending = replay();
      // A mistake of ours that comes after the patience is over comes again, and is told, with the next replay.
      sending.catch(() => undefined);
      // Nobody answered, or the patience is over: in both cases it lies here.
      const givenUp = Promise.race([sending.then(() => undefined), parts.wait(parts.patienceMs)]);
      const first = await Promise.race([answered, givenUp]);
      if (first) return first;
      return waiters.has(entry.id) ? leave(store, entry.id) : answered;
    },
  };
}
