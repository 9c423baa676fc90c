interface Shown {
  readonly roomLowPercent: string;
  readonly roomHighPercent: string;
  readonly leastPercent: string;
  readonly mostPercent: string;
}

/** Where a share stands in the picture of its line, from 0 to 100: room and makings fill it, with a tenth on both sides. */
export function placePercent(percent: string, line: Shown): number {
  const values = [line.roomLowPercent, line.roomHighPercent, line.leastPercent, line.mostPercent].map(Number);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const width = high - low || 1;
  return 10 + (80 * (Number(percent) - low)) / width;
}
