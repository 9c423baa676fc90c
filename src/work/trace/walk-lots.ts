import { type MadeFrom, type Reader, stepAlong } from '../../storage/index.ts';

export interface ReachedLot {
  readonly lotId: string;
  /** 1: made directly of it, or it directly of this. */
  readonly depth: number;
}

export interface Walked {
  /** Each lot once, nearest first. */
  readonly reached: readonly ReachedLot[];
  readonly steps: readonly MadeFrom[];
}

/** More steps than any making has: base in base in mixture in tin. A guard, since a lot cannot be made of itself. */
const DEEPEST = 50;

/** Breadth first, a query or two for each step however many lots there are and however many it starts from. */
export async function walkLots(
  db: Reader,
  starts: readonly string[],
  direction: 'forward' | 'back',
): Promise<Walked> {
  const depths = new Map(starts.map((start) => [start, 0]));
  const walked: MadeFrom[] = [];
  let frontier = [...depths.keys()];
  for (let depth = 1; frontier.length > 0 && depth <= DEEPEST; depth += 1) {
    const steps = await stepAlong(db, frontier, direction);
    walked.push(...steps);
    frontier = [...new Set(steps.map((step) => farEnd(step, direction)))].filter((lot) => !depths.has(lot));
    for (const lot of frontier) depths.set(lot, depth);
  }
  for (const start of starts) depths.delete(start);
  return { reached: [...depths].map(([lotId, depth]) => ({ lotId, depth })), steps: walked };
}

const farEnd = (step: MadeFrom, direction: 'forward' | 'back'): string =>
  direction === 'forward' ? step.madeLotId : step.usedLotId;
