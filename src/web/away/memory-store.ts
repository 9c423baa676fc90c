import type { KeptEntry } from './kept-entry.ts';
import type { OutboxStore } from './outbox-store.ts';

/** Where the browser gives no database (some private windows): entries live as long as the page, which says so. */
export function makeMemoryStore(): OutboxStore {
  let entries: readonly KeptEntry[] = [];
  return {
    async add(entry) {
      entries = [...entries, entry];
    },
    first: async () => entries[0],
    list: async () => entries,
    async remove(id) {
      entries = entries.filter((entry) => entry.id !== id);
    },
    async leave(id) {
      entries = entries.map((entry) => (entry.id === id ? { ...entry, state: 'waiting' } : entry));
    },
  };
}
