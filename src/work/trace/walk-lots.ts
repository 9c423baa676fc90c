import { type MadeFrom, type Reader, stepAlong } from '../../storage/index.ts';

export interface ReachedLot {
  readonly lotId: string;
  /** 1: made directly of it, or it directly of this. */
  readonly depth: number;
  /** How much of it went into what was reached before it (back), or of what was reached before into it (forward). */
  readonly quantity: number;
}

/** More steps than any making has: base in base in mixture in tin. A guard, since a lot cannot be made of itself. */
const DEEPEST = 50;

/** Breadth first from one lot, a query or two for each step however many lots there are. */
export async function walkLots(
  db: Reader,
  start: string,
  direction: 'forward' | 'back',
): Promise<ReachedLot[]> {
  const reached = new Map<string, ReachedLot>();
  const seen = new Set([start]);
  let frontier = [start];
  for (let depth = 1; frontier.length > 0 && depth <= DEEPEST; depth += 1) {
    const steps = await stepAlong(db, frontier, direction);
    for (const step of steps) addStep(reached, step, direction, depth, seen);
    frontier = [...new Set(steps.map((step) => farEnd(step, direction)))].filter((lot) => !seen.has(lot));
    for (const lot of frontier) seen.add(lot);
  }
  return [...reached.values()];
}

const farEnd = (step: MadeFrom, direction: 'forward' | 'back'): string =>
  direction === 'forward' ? step.madeLotId : step.usedLotId;

/** A lot reached twice (an oil used in two of the lots behind a tin) stands once, nearest, with its amounts added. */
function addStep(
  reached: Map<string, ReachedLot>,
  step: MadeFrom,
  direction: 'forward' | 'back',
  depth: number,
  seen: Set<string>,
) {
  const lotId = farEnd(step, direction);
  const before = reached.get(lotId);
  if (!before && seen.has(lotId)) return;
  reached.set(lotId, {
    lotId,
    depth: before?.depth ?? depth,
    quantity: (before?.quantity ?? 0) + step.quantity,
  });
}
