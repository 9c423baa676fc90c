export interface CheckPicture {
  readonly width: number;
  readonly height: number;
  readonly dots: readonly { readonly x: number; readonly y: number }[];
  readonly upper: number;
  readonly centre: number;
  readonly lower: number;
}

const WIDTH = 720;
const HEIGHT = 240;
const EDGE = 34;

/** Places checks from left to right by their order, more above. A picture only: nothing is judged by it. */
export function plotChecks(
  deviations: readonly number[],
  { upper, centre, lower }: { readonly upper: number; readonly centre: number; readonly lower: number },
): CheckPicture {
  const all = [...deviations, upper, lower];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const span = high - low || 1;
  const heightOf = (grams: number): number => HEIGHT - EDGE - ((grams - low) / span) * (HEIGHT - 2 * EDGE);
  const step = (WIDTH - 2 * EDGE) / Math.max(1, deviations.length - 1);
  return {
    width: WIDTH,
    height: HEIGHT,
    dots: deviations.map((grams, index) => ({ x: EDGE + step * index, y: heightOf(grams) })),
    upper: heightOf(upper),
    centre: heightOf(centre),
    lower: heightOf(lower),
  };
}
