import { makeStore } from '../api/make-store.ts';
import type { KeptEntry } from './kept-entry.ts';

/** An entry that has arrived, while the page still shows what it was told before. */
interface Sent {
  readonly entry: KeptEntry;
  readonly sentAt: number;
}

/**
 * Entries that are at the workshop, and that no answer has told of yet: where it falls silent right after, they stay in
 * sight, so that nobody weighs the same in again.
 */
export const sentEntries = makeStore<readonly Sent[]>([]);

export const noteSent = (entry: KeptEntry): void =>
  sentEntries.write([...sentEntries.read(), { entry, sentAt: performance.now() }]);

/** Whose answers the kept entries are laid over; what else is asked by the same id tells nothing of them. */
const TELLING: ReadonlySet<string> = new Set(['getBatch', 'getRun']);

/** By then the page shows the answer (some milliseconds as a rule). */
const SHOWN_MS = 50;

/**
 * The workshop has told anew of what has this id; it was asked at that moment. An entry leaves only once the answer is on
 * the page: gone before, what had begun would be seen as not begun, and its screen would start afresh.
 */
export function noteTold(route: string, id: string, askedAt: number): void {
  if (!TELLING.has(route)) return;
  setTimeout(() => {
    const left = sentEntries.read().filter(({ entry, sentAt }) => entry.params.id !== id || sentAt > askedAt);
    if (left.length < sentEntries.read().length) sentEntries.write(left);
  }, SHOWN_MS);
}
