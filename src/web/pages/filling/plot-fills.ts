export interface FillPicture {
  readonly width: number;
  readonly height: number;
  readonly dots: readonly { readonly x: number; readonly y: number }[];
  /** Heights of the lines asked for, in their order. */
  readonly lines: readonly number[];
}

const WIDTH = 720;
const HEIGHT = 180;
const EDGE = 24;

/** Places tins from left to right, heavier ones higher. A picture only: nothing is judged by it. */
export function plotFills(nets: readonly number[], marks: readonly number[]): FillPicture {
  const all = [...nets, ...marks];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const span = high - low || 1;
  const heightOf = (grams: number): number => HEIGHT - EDGE - ((grams - low) / span) * (HEIGHT - 2 * EDGE);
  const step = (WIDTH - 2 * EDGE) / Math.max(1, nets.length - 1);
  return {
    width: WIDTH,
    height: HEIGHT,
    dots: nets.map((grams, index) => ({ x: EDGE + step * index, y: heightOf(grams) })),
    lines: marks.map(heightOf),
  };
}
