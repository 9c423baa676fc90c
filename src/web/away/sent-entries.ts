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

/** The workshop has told anew of what has this id; it was asked at that moment. */
export function noteTold(id: string, askedAt: number): void {
  const left = sentEntries.read().filter(({ entry, sentAt }) => entry.params.id !== id || sentAt > askedAt);
  if (left.length < sentEntries.read().length) sentEntries.write(left);
}
