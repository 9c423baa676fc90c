import type { Transaction } from 'kysely';
import { type Problem, problem, type Result, refused } from '../core/problem.ts';
import { sha256 } from './canonical.ts';
import { appendEntry, findEntry } from './entry-store.ts';
import { RowStory } from './record-rows.ts';
import { findSalt, insertSalt } from './salt-store.ts';
import type { Database } from './schema.ts';
import type { Storage } from './storage.ts';
import { watchRows } from './watch-rows.ts';
import type { Written } from './written-watch.ts';

export type Writer = Transaction<Database>;

/** Who, when, where: made where it was entered. */
export interface WriteStamp {
  readonly id: string;
  readonly at: string;
  readonly by: string | null;
  readonly device: string;
  readonly asked: Asked;
}

/** What was asked, word for word: only its hash is kept, so that the same stamp on something else is noticed. */
export interface Asked {
  readonly text: string;
  /** Random, where the text holds what a customer may ask to be erased; else nothing. */
  readonly salt: string | null;
}

const hashAsked = (text: string, salt: string | null): string => sha256(`${salt ?? ''}\n${text}`);

/** What a write adds to the chain. */
export interface WriteStory {
  readonly kind: string;
  readonly subjectKind: string;
  readonly subjectId: string;
  readonly payload: unknown;
}

/** Carries a refusal out of the transaction, so that it is rolled back whole. */
class Refusal extends Error {
  readonly problems: readonly Problem[];
  constructor(problems: readonly Problem[]) {
    super('refused');
    this.problems = problems;
  }
}

/** Inside `writeOnce`: unwraps, or gives the whole write up. */
export function orGiveUp<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new Refusal(result.problems);
}

export function giveUp(...problems: readonly Problem[]): never {
  throw new Refusal(problems);
}

type Outcome<T> = Result<
  { readonly again: false; readonly value: T } | { readonly again: true; readonly subjectId: string }
>;

/**
 * One write: one transaction, one link of the chain, all or nothing.
 *
 * `tell` says what the write is, `carryOut` does it; the chain's entry is written last, with the hashes of the records.
 * The same entry sent again (same stamp id, same request) writes nothing and answers `again: true` with the subject it
 * was about; the same stamp id on anything else is refused.
 */
export async function writeOnce<T>(
  storage: Storage,
  stamp: WriteStamp,
  recordedAt: string,
  carryOut: (tx: Writer, tell: (story: WriteStory) => Promise<void>) => Promise<T>,
): Promise<Outcome<T>> {
  const earlier = await findEarlier(storage, stamp);
  if (earlier) return earlier;
  const write = (tx: Writer) => writeIn(tx, stamp, recordedAt, carryOut);
  try {
    // What is part of a larger write is told with it.
    if (storage.within) return answered((await write(storage.within)).value);
    const { value, written } = await storage.db.transaction().execute(write);
    storage.written.tell(written);
    return answered(value);
  } catch (error) {
    // The same entry may have been sent twice at once: whichever comes second finds the first on disk.
    const raced = await findEarlier(storage, stamp);
    if (raced) return raced;
    if (error instanceof Refusal) return refused(...error.problems);
    const known = databaseProblem(error, storage.file);
    if (known) return refused(known);
    throw error;
  }
}

const answered = <T>(value: T): Outcome<T> => ({ ok: true, value: { again: false, value } });

/** The same file, where every write is part of this transaction: its rows belong to entries of their own. */
export function joinWrite(storage: Storage, tx: Writer): Storage {
  const within = tx.withoutPlugins();
  return { ...storage, db: within, within };
}

async function writeIn<T>(
  tx: Writer,
  stamp: WriteStamp,
  recordedAt: string,
  carryOut: (tx: Writer, tell: (story: WriteStory) => Promise<void>) => Promise<T>,
): Promise<{ readonly value: T; readonly written: Written }> {
  const rows = new RowStory();
  const told: WriteStory[] = [];
  const value = await carryOut(tx.withPlugin(watchRows(rows)), async (story) => {
    told.push(story);
  });
  const [story] = told;
  if (!story || told.length > 1) throw new Error(`a write tells its story once, told ${told.length} times`);
  const { text, salt } = stamp.asked;
  const seq = await appendEntry(tx, {
    ...story,
    id: stamp.id,
    requestHash: hashAsked(text, salt),
    rows: rows.text(),
    happenedAt: stamp.at,
    recordedAt,
    personId: stamp.by,
    device: stamp.device,
  });
  if (salt !== null) await insertSalt(tx, stamp.id, salt);
  const { kind, subjectKind, subjectId } = story;
  return {
    value,
    written: { seq, kind, subjectKind, subjectId, entryId: stamp.id, by: stamp.by, device: stamp.device },
  };
}

/** The entry that stands under this stamp already, if the same was asked; where the salt was erased, nobody can tell. */
async function findEarlier(
  { db }: Storage,
  { id, asked }: WriteStamp,
): Promise<Result<{ readonly again: true; readonly subjectId: string }> | undefined> {
  const entry = await findEntry(db, id);
  if (!entry) return undefined;
  const salt = asked.salt === null ? null : ((await findSalt(db, id)) ?? null);
  if (entry.request_hash === hashAsked(asked.text, salt))
    return { ok: true, value: { again: true, subjectId: entry.subject_id } };
  return refused(problem('stamp-used-otherwise', 'stamp.id', { found: id, allowed: entry.recorded_at }));
}

/** Whether this very request stands already, under this stamp. */
export async function isWritten(storage: Storage, stamp: WriteStamp): Promise<boolean> {
  return (await findEarlier(storage, stamp))?.ok ?? false;
}

/** What the database itself refuses, as a problem; anything else is a mistake of ours and goes on as an exception. */
function databaseProblem(error: unknown, file: string): Problem | undefined {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  const message = error instanceof Error ? error.message : '';
  if (code === 'SQLITE_FULL' || /ENOSPC|disk is full/.test(message)) return problem('disk-full', file);
  if (code.startsWith('SQLITE_READONLY')) return problem('file-not-writable', file);
  if (code.startsWith('SQLITE_IOERR')) return problem('disk-trouble', file, { found: code });
  if (code === 'SQLITE_CONSTRAINT_TRIGGER' && message === 'overdraft')
    return problem('lot-overdrawn', 'quantity');
  if (code === 'SQLITE_CONSTRAINT_TRIGGER' && message === 'revision-fixed')
    return problem('revision-fixed', 'revision');
  if (code === 'SQLITE_CONSTRAINT_FOREIGNKEY') return problem('thing-not-found', 'id');
  return undefined;
}
