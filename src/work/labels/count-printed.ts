import { readPrintedDesign } from './printed-design.ts';

interface Print {
  readonly copies: number;
  readonly design: string | null;
}

/** How many of each kind of label were printed, by its id in the design. */
export function sumPrinted(prints: readonly Print[]): ReadonlyMap<string, number> {
  const sums = new Map<string, number>();
  for (const { copies, design } of prints)
    for (const { id } of readPrintedDesign(design).pieces) sums.set(id, (sums.get(id) ?? 0) + copies);
  return sums;
}

/** Of the kind of which most were printed. */
export const countPrinted = (prints: readonly Print[]): number => Math.max(0, ...sumPrinted(prints).values());
