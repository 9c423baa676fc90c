export { canonicalJson, sha256 } from './canonical.ts';
export { appendEntry, type EntryRow, findEntry, hashEntry } from './entry-store.ts';
export type { Database } from './schema.ts';
export { openStorage, type Reader, type Storage } from './storage.ts';
export { giveUp, orGiveUp, type Writer, type WriteStamp, type WriteStory, writeOnce } from './write.ts';
