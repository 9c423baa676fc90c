/** One weighing that stands, in whole micrograms. */
export interface StandingWeighing {
  readonly ug: number;
  /** More of it was to come. */
  readonly isPart: boolean;
  /** Place of the entry that said last that this is all there is; null: nobody did. */
  readonly endedSeq: number | null;
  /** Its place in the order of all entries. */
  readonly seq: number;
}

export interface AskedOfPosition {
  readonly targetUg: number;
  readonly lowUg: number;
  /** Place of the entry since which this much is asked; null: asked from the beginning. */
  readonly askedAfter: number | null;
}

export interface PositionState {
  readonly inUg: number;
  /** What is still to weigh; nought where the position is done, or holds more than its target. */
  readonly leftUg: number;
  readonly isDone: boolean;
}

/**
 * Whether a position is done, and what is still to weigh there. It is done once its last weighing was said to be all of
 * it, with it or since. What was asked for later (the batch became larger or smaller) decides anew: done where at least
 * the lower end of its band is in, whatever was said before. Exact: whole micrograms.
 */
export function judgePosition(entries: readonly StandingWeighing[], asked: AskedOfPosition): PositionState {
  const inUg = entries.reduce((sum, { ug }) => sum + ug, 0);
  const isDone = isPositionDone(entries, asked, inUg);
  return { inUg, leftUg: isDone ? 0 : Math.max(0, asked.targetUg - inUg), isDone };
}

function isPositionDone(
  entries: readonly StandingWeighing[],
  { targetUg, lowUg, askedAfter }: AskedOfPosition,
  inUg: number,
): boolean {
  const last = entries.at(-1);
  // Another lot gave all of it: nothing is asked of this one.
  if (!last) return targetUg === 0;
  const saidSeq = last.endedSeq ?? (last.isPart ? null : last.seq);
  if (askedAfter === null || askedAfter <= last.seq) return saidSeq !== null;
  return inUg >= lowUg || (saidSeq !== null && saidSeq > askedAfter);
}
