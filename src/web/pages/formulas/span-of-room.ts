import { type Exact, exact, HUNDRED, largest, smallest, toText, ZERO } from '../../../core/quantity/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';

export type Room = AnswerOf<'getRoom'>;
export type RoomLine = Room['lines'][number];
export type RoomBound = NonNullable<RoomLine['up']['label']>;

/** Where a line stands between what breaks first below it and above it. */
export interface RoomSpan {
  readonly low: string;
  readonly high: string;
  /** Of one, from the low end. */
  readonly level: number;
  /** The nearest bound each way; undefined: nothing known stops it there. */
  readonly lowest: RoomBound | undefined;
  readonly highest: RoomBound | undefined;
  /** What each of these is of. */
  readonly lowestKind: RoomKind | undefined;
  readonly highestKind: RoomKind | undefined;
}

export type RoomKind = keyof RoomLine['up'];

const KINDS: readonly RoomKind[] = ['limit', 'report', 'label'];

const boundsOf = ({ label, report, limit }: RoomLine['up']): RoomBound[] =>
  [limit, report, label].filter((bound) => bound !== null);

/** No share of a whole. */
const NEVER = -1;

export function spanOfRoom({ percent, up, down }: RoomLine): RoomSpan {
  const above = boundsOf(up);
  const below = boundsOf(down);
  const high = smallest(HUNDRED, ...above.map((bound) => exact(bound.percent)));
  const low = largest(ZERO, ...below.map((bound) => exact(bound.percent)));
  return {
    low: toText(low),
    high: toText(high),
    level: levelOf(exact(percent), low, high),
    lowest: below.find((bound) => low.eq(bound.percent)),
    highest: above.find((bound) => high.eq(bound.percent)),
    lowestKind: KINDS.find((kind) => low.eq(down[kind]?.percent ?? NEVER)),
    highestKind: KINDS.find((kind) => high.eq(up[kind]?.percent ?? NEVER)),
  };
}

/** For drawing alone: what stands at its bound may read as a little beyond it, once cut for reading. */
function levelOf(now: Exact, low: Exact, high: Exact): number {
  const width = high.minus(low);
  return width.lte(0) ? 0.5 : smallest(largest(now.minus(low).div(width), ZERO), exact(1)).toNumber();
}

/**
 * The line first that has the least room upward for its size; those that nothing stops come last, and after them the
 * largest, which mostly gives way to the others.
 */
export function closestFirst(lines: readonly RoomLine[]): readonly RoomLine[] {
  const [largestLine] = lines.toSorted((one, other) => exact(other.percent).cmp(one.percent));
  const others = sortByRoom(lines.filter((line) => line !== largestLine));
  return largestLine ? [...others, largestLine] : [];
}

function sortByRoom(lines: readonly RoomLine[]): readonly RoomLine[] {
  const roomOf = (line: RoomLine): Exact | undefined => {
    const { highest } = spanOfRoom(line);
    return highest && exact(line.percent).gt(0) ? exact(highest.percent).div(line.percent) : undefined;
  };
  return lines.toSorted((one, other) => {
    const [left, right] = [roomOf(one), roomOf(other)];
    if (!left || !right) return Number(left === undefined) - Number(right === undefined);
    return left.cmp(right);
  });
}
