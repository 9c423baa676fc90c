import type { Transaction } from 'kysely';
import { type Problem, problem, type Result, refused } from '../core/problem.ts';
import { appendEntry, findEntry } from './entry-store.ts';
import type { Database } from './schema.ts';
import type { Storage } from './storage.ts';

export type Writer = Transaction<Database>;

/** Who, when, where: made where it was entered. */
export interface WriteStamp {
  readonly id: string;
  readonly at: string;
  readonly by: string | null;
  readonly device: string;
}

/** What a write adds to the chain. */
export interface WriteStory {
  readonly kind: string;
  readonly subjectKind: string;
  readonly subjectId: string;
  readonly payload: unknown;
}

export interface Written<T> {
  readonly story: WriteStory;
  readonly value: T;
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

/**
 * One write: one transaction, one link of the chain, all or nothing.
 *
 * The chain's entry is written first, since records refer to it; `tell` says what the write will be, `carryOut` does it.
 * The same entry sent again (same stamp id) writes nothing and answers `again: true` with the subject it was about.
 */
export async function writeOnce<T>(
  storage: Storage,
  stamp: WriteStamp,
  recordedAt: string,
  carryOut: (tx: Writer, tell: (story: WriteStory) => Promise<void>) => Promise<T>,
): Promise<
  Result<{ readonly again: false; readonly value: T } | { readonly again: true; readonly subjectId: string }>
> {
  const earlier = await findEntry(storage.db, stamp.id);
  if (earlier) return { ok: true, value: { again: true, subjectId: earlier.subject_id } };
  try {
    const value = await storage.db.transaction().execute(async (tx) => {
      let told = 0;
      const answer = await carryOut(tx, async (story) => {
        told += 1;
        await appendEntry(tx, {
          ...story,
          id: stamp.id,
          happenedAt: stamp.at,
          recordedAt,
          personId: stamp.by,
          device: stamp.device,
        });
      });
      if (told !== 1) throw new Error(`a write tells its story once, told ${told} times`);
      return answer;
    });
    return { ok: true, value: { again: false, value } };
  } catch (error) {
    // The same entry may have been sent twice at once: whichever comes second finds the first on disk.
    const raced = await findEntry(storage.db, stamp.id);
    if (raced) return { ok: true, value: { again: true, subjectId: raced.subject_id } };
    if (error instanceof Refusal) return refused(...error.problems);
    const known = databaseProblem(error, storage.file);
    if (known) return refused(known);
    throw error;
  }
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
