interface Shown {
  readonly roomLowPercent: string;
  readonly roomHighPercent: string;
  readonly leastPercent: string;
  readonly mostPercent: string;
}

/**
 * Where a share stands in the picture of its line, from 0 to 100: room and makings fill it, with a tenth on both sides. A
 * line that has no room and never wandered stands in the middle.
 */
export function placePercent(percent: string, line: Shown): number {
  const values = [line.roomLowPercent, line.roomHighPercent, line.leastPercent, line.mostPercent].map(Number);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const width = high - low;
  return width === 0 ? 50 : 10 + (80 * (Number(percent) - low)) / width;
}
