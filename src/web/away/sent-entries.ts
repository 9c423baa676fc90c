import { type Kept, kept } from '../api/kept.ts';
import { makeStore, type Store } from '../api/make-store.ts';
import type { KeptEntry } from './kept-entry.ts';

/** An entry that has arrived, while the page still shows what it was told before. */
interface Sent {
  readonly entry: KeptEntry;
  readonly sentAt: number;
}

interface SentEntries {
  readonly store: Store<readonly Sent[]>;
  readonly noteSent: (entry: KeptEntry) => void;
  /** The workshop has told anew of what has this id; it was asked at that moment. */
  readonly noteTold: (route: string, id: string, askedAt: number) => void;
  /** Of a device that was dropped. */
  readonly forget: () => void;
}

/** Whose answers the kept entries are laid over; what else is asked by the same id tells nothing of them. */
const TELLING: ReadonlySet<string> = new Set(['getBatch', 'getRun']);

/** By then the page shows the answer (some milliseconds as a rule). */
const SHOWN_MS = 50;

const KEY = 'sent';
/** More than arrive between two answers; a picture is no part of what is shown by digits (common practice, no source). */
const [MOST, LONGEST] = [50, 20_000];

/**
 * Entries that are at the workshop, and that no answer has told of yet: where it falls silent right after, they stay in
 * sight, also through a reload, so that nobody weighs the same in again.
 */
export function makeSentEntries(kept: Kept): SentEntries {
  // What an earlier page left arrived before anything that this one asks.
  const store = makeStore<readonly Sent[]>(readKept(kept).map((entry) => ({ entry, sentAt: 0 })));
  const keep = (entries: readonly KeptEntry[]): void =>
    kept.write(KEY, entries.length === 0 ? null : JSON.stringify(entries.slice(-MOST)));
  return {
    store,
    noteSent(entry) {
      store.write([...store.read(), { entry, sentAt: performance.now() }]);
      if (JSON.stringify(entry).length <= LONGEST) keep([...readKept(kept), entry]);
    },
    noteTold(route, id, askedAt) {
      if (!TELLING.has(route)) return;
      // An entry leaves only once the answer is on the page: gone before, what had begun would be seen as not begun.
      setTimeout(() => {
        const isTold = ({ entry, sentAt }: Sent) => entry.params.id === id && sentAt <= askedAt;
        const told = new Set(store.read().flatMap((sent) => (isTold(sent) ? [sent.entry.id] : [])));
        if (told.size === 0) return;
        store.write(store.read().filter(({ entry }) => !told.has(entry.id)));
        // Another tab may have sent some meanwhile: they are its own to forget.
        keep(readKept(kept).filter((entry) => !told.has(entry.id)));
      }, SHOWN_MS);
    },
    forget() {
      store.write([]);
      keep([]);
    },
  };
}

function readKept(kept: Kept): readonly KeptEntry[] {
  try {
    const read: unknown = JSON.parse(kept.read(KEY) ?? '[]');
    return Array.isArray(read) ? (read as KeptEntry[]) : [];
  } catch {
    // Not ours, or cut off: it shows less, and loses nothing.
    return [];
  }
}

export const { store: sentEntries, noteSent, noteTold, forget: forgetSent } = makeSentEntries(kept);
