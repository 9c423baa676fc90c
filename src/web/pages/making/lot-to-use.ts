import type { Addition } from './batch.ts';

/** The lot that a line is weighed from now: the planned one, until it ran out. null: none was planned. */
export function lotToUse({ lotId, entries }: Addition): string | null {
  const ranOut = entries.findLast(({ reading }) => reading?.restLot !== undefined)?.reading?.restLot;
  return ranOut?.id ?? lotId;
}

/** Its number, as far as the batch tells it. */
export const lotNumberIn = ({ lotId, lotNumber, entries }: Addition, wanted: string): string | undefined =>
  [
    { id: lotId, number: lotNumber },
    ...entries.map((entry) => ({ id: entry.lotId, number: entry.lotNumber })),
    ...entries.flatMap(({ reading }) => reading?.restLot ?? []),
  ].find(({ id, number }) => id === wanted && number !== null && number !== '')?.number ?? undefined;
