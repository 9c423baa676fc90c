/** A write that is on disk at the workshop, as its stream tells of it. */
export interface LiveEvent {
  readonly seq: number;
  readonly kind: string;
  readonly subjectKind: string;
  readonly subjectId: string;
  readonly entryId: string;
  readonly by: string | null;
  readonly device: string;
}

/** Reads that show one thing only, and what that thing is. */
const SHOWS_ONE: Readonly<Record<string, string>> = { getBatch: 'batch', getRun: 'filling-run' };

/** Whether an answer may look otherwise since: another batch than the one that was written to does not. */
export function isTouchedBy(
  { subjectKind, subjectId }: LiveEvent,
  [name, request]: readonly unknown[],
): boolean {
  const shows = SHOWS_ONE[String(name)];
  const id = (request as { readonly params?: { readonly id?: string } } | undefined)?.params?.id;
  return shows !== subjectKind || id === subjectId;
}
