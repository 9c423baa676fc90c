export interface LotAtDepth {
  readonly lot: string;
  /** Steps of making away: 1 is the next. */
  readonly depth: number;
}

/** `madeFrom`: each lot that was made, with the lots that went into it. */
export type MadeFrom = ReadonlyMap<string, readonly string[]>;

/** Every lot that can be reached, nearest first; each once, so that a loop (topped up from itself) ends. */
export function walkLots(start: string, steps: (lot: string) => readonly string[]): LotAtDepth[] {
  const seen = new Set([start]);
  const reached: LotAtDepth[] = [];
  let level = [start];
  for (let depth = 1; level.length > 0; depth++) {
    const next: string[] = [];
    for (const from of level) {
      for (const lot of steps(from)) {
        if (seen.has(lot)) continue;
        seen.add(lot);
        next.push(lot);
      }
    }
    reached.push(...next.map((lot) => ({ lot, depth })));
    level = next;
  }
  return reached;
}

/** For each lot the lots it went into: the making read the other way. */
export function wentInto(madeFrom: MadeFrom): Map<string, string[]> {
  const into = new Map<string, string[]>();
  for (const [made, parts] of madeFrom) {
    for (const part of parts) {
      const lots = into.get(part);
      if (lots) lots.push(made);
      else into.set(part, [made]);
    }
  }
  return into;
}
