/** Least: the widest word. Most: the widest line. */
export interface ColumnNeed {
  readonly leastMm: number;
  readonly mostMm: number;
  readonly fixedMm?: number;
  /** Takes what is left over: text does, figures do not. */
  readonly isStretchy: boolean;
}

/**
 * Shares a width out among columns. Fixed ones first; the others get their widest line where there is room for all,
 * else their widest word and a share of the rest in proportion to what they still want. If not even that fits, words break.
 */
export function shareOutColumns(needs: readonly ColumnNeed[], widthMm: number): number[] {
  const fixed = sumOf(needs, (need) => need.fixedMm ?? 0);
  const free = needs.filter((need) => need.fixedMm === undefined);
  const forFree = widthMm - fixed;
  if (forFree < 0 || (forFree === 0 && free.length > 0)) {
    throw new RangeError(`fixed columns of ${fixed} mm leave no room in ${widthMm} mm`);
  }
  const least = sumOf(free, (need) => need.leastMm);
  const most = sumOf(free, (need) => need.mostMm);
  return needs.map((need) => {
    if (need.fixedMm !== undefined) return need.fixedMm;
    if (most <= forFree) return need.mostMm + leftoverOf(need, free, forFree - most);
    if (least >= forFree) return (forFree * need.leastMm) / least;
    return need.leastMm + ((need.mostMm - need.leastMm) * (forFree - least)) / (most - least);
  });
}

function leftoverOf(need: ColumnNeed, free: readonly ColumnNeed[], leftoverMm: number): number {
  const takers = free.some(({ isStretchy }) => isStretchy)
    ? free.filter(({ isStretchy }) => isStretchy)
    : free;
  if (!takers.includes(need)) return 0;
  const wanted = sumOf(takers, ({ mostMm }) => mostMm);
  return wanted === 0 ? leftoverMm / takers.length : (leftoverMm * need.mostMm) / wanted;
}

const sumOf = <T>(list: readonly T[], widthIn: (item: T) => number): number =>
  list.reduce((sum, item) => sum + widthIn(item), 0);
