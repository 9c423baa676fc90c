import type { PositionState } from '../../core/making/index.ts';
import { type BatchLineNow, judgeLine, type SignedAddition } from '../../storage/index.ts';

/** What was weighed in at the position of a line and stands, in the order of entry. */
export const standingAt = (
  line: Pick<BatchLineNow, 'position'>,
  additions: readonly SignedAddition[],
): SignedAddition[] => additions.filter((row) => row.position === line.position && !row.is_struck);

/** How far a line of a batch is weighed in. */
export const weighState = (line: BatchLineNow, additions: readonly SignedAddition[]): PositionState =>
  judgeLine(line, additions);
