import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { KeptEntry } from './kept-entry.ts';

/** Where entries lie until the workshop has them, in the order in which they were made. */
export interface OutboxStore {
  readonly add: (entry: KeptEntry) => Promise<void>;
  readonly first: () => Promise<KeptEntry | undefined>;
  readonly list: () => Promise<readonly KeptEntry[]>;
  readonly remove: (id: string) => Promise<void>;
  /** Nobody waits for its answer any more. */
  readonly leave: (id: string) => Promise<void>;
}

interface OutboxSchema extends DBSchema {
  outbox: { key: number; value: KeptEntry; indexes: { id: string } };
}

/** A commit is on the tablet's disk when it returns (Indexed Database API 3.0, transaction durability hint). */
const ON_DISK = { durability: 'strict' } as const;

/** `onClosed`: the browser closed it, as some do with a page in the background; it has to be opened anew. */
const openDatabase = (name: string, onClosed: () => void): Promise<IDBPDatabase<OutboxSchema>> =>
  openDB<OutboxSchema>(name, 1, {
    upgrade(db) {
      const outbox = db.createObjectStore('outbox', { autoIncrement: true });
      outbox.createIndex('id', 'id', { unique: true });
    },
    // Another tab with a newer page wants to change the tables: it must not wait for this one.
    blocking(_current, _blocked, event) {
      (event.target as IDBDatabase).close();
      onClosed();
    },
    terminated: onClosed,
  });

/** The outbox in this browser's own database; it survives a closed tab and a flat battery. */
export async function openOutboxStore(
  name = 'gramwright',
  onClosed: () => void = () => undefined,
): Promise<OutboxStore> {
  const db = await openDatabase(name, onClosed);
  return {
    async add(entry) {
      const tx = db.transaction('outbox', 'readwrite', ON_DISK);
      await Promise.all([tx.store.add(entry), tx.done]);
    },
    first: async () => (await db.getAll('outbox', null, 1))[0],
    list: () => db.getAll('outbox'),
    async remove(id) {
      const tx = db.transaction('outbox', 'readwrite', ON_DISK);
      const key = await tx.store.index('id').getKey(id);
      if (key !== undefined) await tx.store.delete(key);
      await tx.done;
    },
    async leave(id) {
      const tx = db.transaction('outbox', 'readwrite', ON_DISK);
      const cursor = await tx.store.index('id').openCursor(id);
      await cursor?.update({ ...cursor.value, state: 'waiting' });
      await tx.done;
    },
  };
}
