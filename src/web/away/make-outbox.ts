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
export type Rest = 'empty' | 'silent' | 'door' | 'held' | 'other-tab';

/**
 * An entry that others go past: whoever signed it is locked out here, the workshop will not even have it as a question, or
 * something broke there before anybody judged it.
 */
export interface HeldEntry {
  readonly entry: KeptEntry;
  readonly problems: readonly Problem[];
}

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
  /** What the last round went past. */
  readonly onHeld: (held: readonly HeldEntry[]) => void;
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

/** What became of one entry in a round: `gone` from here, or why it stays. */
type Outcome =
  | { readonly is: 'gone' | 'silent' | 'door' }
  | { readonly is: 'held'; readonly problems: readonly Problem[] };
const GONE: Outcome = { is: 'gone' };
const SILENT: Outcome = { is: 'silent' };

export function makeOutbox(parts: OutboxParts): Outbox {
  const waiters = new Map<string, Waiter>();
  /** Whoever still waits for this answer. Taken before the disk is written: patience that ends meanwhile changes nothing. */
  const callOff = (id: string): Waiter | undefined => {
    const waiter = waiters.get(id);
    waiters.delete(id);
    return waiter;
  };

  async function takeOut(store: OutboxStore, entry: KeptEntry, isSent: boolean): Promise<Outcome> {
    await store.remove(entry.id);
    parts.onChange(isSent ? entry : undefined);
    return GONE;
  }

  async function tellAndTakeOut(store: OutboxStore, entry: KeptEntry, entered: Entered): Promise<Outcome> {
    const waiter = callOff(entry.id);
    try {
      return await takeOut(store, entry, entered.how === 'answered');
    } finally {
      waiter?.(entered);
    }
  }

  async function sendOne(store: OutboxStore, entry: KeptEntry): Promise<Outcome> {
    try {
      await parts.send(entry);
    } catch (error) {
      if (!(error instanceof ApiProblem)) throw error;
      return refuseOne(store, entry, error);
    }
    return tellAndTakeOut(store, entry, { how: 'answered' });
  }

  async function refuseOne(
    store: OutboxStore,
    entry: KeptEntry,
    { isAnswered, isBroken, problems }: ApiProblem,
  ): Promise<Outcome> {
    if (!isAnswered) return SILENT;
    const shut = stayBecause(problems);
    if (shut) return shut;
    // Nobody judged it: it stays with its stamp, so that it counts once if it was written before something broke.
    if (isBroken) return { is: 'held', problems };
    // Its claim has arrived, though the answer to that never came back here.
    if (problems.some(({ code }) => code === 'kept-as-question'))
      return tellAndTakeOut(store, entry, { how: 'kept' });
    if (waiters.has(entry.id)) return tellAndTakeOut(store, entry, { how: 'refused', problems });
    try {
      await parts.claim(entry, problems);
    } catch (error) {
      if (!(error instanceof ApiProblem)) throw error;
      if (!error.isAnswered) return SILENT;
      return stayBecause(error.problems) ?? { is: 'held', problems: error.problems };
    }
    return takeOut(store, entry, false);
  }

  /** Whoever stands before another tab gets the answer there. */
  const isAskedElsewhere = (entry: KeptEntry): boolean =>
    entry.state === 'asked' && entry.tab !== parts.tab && parts.now() < entry.until;

  /** The oldest first; past what is held others go, but none of the same person, whose order holds. */
  async function sendAll(): Promise<Rest> {
    const store = await parts.store();
    const held: HeldEntry[] = [];
    const isPassed = (entry: KeptEntry): boolean =>
      held.some(({ entry: { id, body } }) => id === entry.id || body.stamp.by === entry.body.stamp.by);
    try {
      for (;;) {
        const entry = held.length === 0 ? await store.first() : await firstOf(store, isPassed);
        if (!entry) return held.length === 0 ? 'empty' : 'held';
        if (isAskedElsewhere(entry)) return 'other-tab';
        const outcome = await sendOne(store, entry);
        if (outcome.is === 'held') held.push({ entry, problems: outcome.problems });
        else if (outcome.is !== 'gone') return outcome.is;
      }
    } finally {
      parts.onHeld(held);
    }
  }

  const replay = (): Promise<Rest> => parts.alone(sendAll);

  async function leave(store: OutboxStore, id: string): Promise<Entered> {
    waiters.delete(id);
    // Where that cannot be noted it lies here all the same, and `asked` runs out by itself.
    await store.leave(id).catch(() => undefined);
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
      // Nobody answered, something broke on the way, or the patience is over: in each case it lies here. What broke comes
      // again, and is told, with the next replay.
      const sent = sending.then(nothing, nothing);
      const givenUp = Promise.race([sent, parts.wait(parts.patienceMs)]);
      const first = await Promise.race([answered, givenUp]);
      if (first) return first;
      return waiters.has(entry.id) ? leave(store, entry.id) : answered;
    },
  };
}

const nothing = (): undefined => undefined;

const firstOf = async (
  store: OutboxStore,
  isPassed: (entry: KeptEntry) => boolean,
): Promise<KeptEntry | undefined> => (await store.list()).find((entry) => !isPassed(entry));

/** The door is shut to this tablet, or to this person alone. */
function stayBecause(problems: readonly Problem[]): Outcome | undefined {
  const shut = shutDoor(problems);
  if (shut === undefined) return undefined;
  return shut === 'person-locked' ? { is: 'held', problems } : { is: 'door' };
}
