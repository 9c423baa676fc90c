import { chartTables } from '../../../catalogue/index.ts';
import { findControlChart } from '../../../core/weighing/index.ts';
import { isTin, type Run, type Weight } from './run.ts';

export type LineKind = 'label' | 'aim' | 'limit1' | 'limit2' | 'centre' | 'upper' | 'lower';

export interface DrawnLine {
  readonly kind: LineKind;
  readonly grams: number;
  readonly y: number;
}

export interface DrawnTin {
  readonly weight: Weight;
  readonly x: number;
  readonly y: number;
  readonly isOutside: boolean;
}

export interface FillDrawing {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly DrawnLine[];
  readonly tins: readonly DrawnTin[];
  /** Limits so far below every tin that they would flatten the picture: told in words. */
  readonly below: readonly Exclude<LineKind, 'aim' | 'centre'>[];
  /** More tins until there are control limits; 0: there are. */
  readonly untilControl: number;
}

const WIDTH = 720;
const HEIGHT = 300;
const LEFT = 16;
const RIGHT = 92;
const EDGE = 20;

/** Limits of fewer tins would be of chance (common practice, no source; control-chart says that 20 are better). */
export const LEAST_FOR_CONTROL = 10;

/**
 * The weights from left to right as they came, with what they are measured against. A picture only: nothing is judged by
 * it. By the minimum way T1 and T2 are drawn only where a tin comes near them.
 */
export function drawFills(run: Run): FillDrawing {
  const weights = run.weights.filter(isTin);
  const nets = weights.map(({ netGrams }) => Number(netGrams));
  const control = findControl(nets);
  const label = Number(run.declaredGrams);
  const limits = (['limit1', 'limit2'] as const).flatMap((kind) => {
    const grams = run[`${kind}Grams`];
    return grams === null ? [] : [{ kind, grams: Number(grams) }];
  });
  const isNear = Math.min(...nets) < label || run.fillBasis === 'average';
  const lines = [
    { kind: 'label' as const, grams: label },
    { kind: 'aim' as const, grams: Number(run.aimGrams) },
    ...(isNear ? limits : []),
    ...(control
      ? [
          { kind: 'centre' as const, grams: control.centre },
          { kind: 'upper' as const, grams: control.upper },
          { kind: 'lower' as const, grams: control.lower },
        ]
      : []),
  ];
  const yOf = scaleOf([...nets, ...lines.map(({ grams }) => grams)]);
  const step = (WIDTH - LEFT - RIGHT) / Math.max(1, nets.length - 1);
  return {
    width: WIDTH,
    height: HEIGHT,
    lines: lines.map((line) => ({ ...line, y: yOf(line.grams) })),
    tins: weights.map((weight, index) => ({
      weight,
      x: LEFT + step * index,
      y: yOf(nets[index] ?? label),
      isOutside: control?.outside.includes(index) ?? false,
    })),
    below: isNear ? [] : limits.map(({ kind }) => kind),
    untilControl: Math.max(0, LEAST_FOR_CONTROL - nets.length),
  };
}

function findControl(nets: readonly number[]) {
  if (nets.length < LEAST_FOR_CONTROL) return null;
  const chart = findControlChart({ kind: 'individuals', values: nets }, chartTables);
  if (!chart.ok) return null;
  const { centre, upper, lower, outside } = chart.value;
  return { centre: centre.toNumber(), upper: upper.toNumber(), lower: lower.toNumber(), outside };
}

function scaleOf(all: readonly number[]): (grams: number) => number {
  const low = Math.min(...all);
  const span = Math.max(...all) - low || 1;
  return (grams) => HEIGHT - EDGE - ((grams - low) / span) * (HEIGHT - 2 * EDGE);
}

/** Words at the right edge, moved apart where lines lie closer than a line of text: from the top down. */
export function placeWords(
  lines: readonly DrawnLine[],
  apart = 16,
): readonly (DrawnLine & { wordY: number })[] {
  let last = Number.NEGATIVE_INFINITY;
  const down = [...lines]
    .sort((one, other) => one.y - other.y)
    .map((line) => {
      last = Math.max(line.y, last + apart);
      return { ...line, wordY: last };
    });
  const over = Math.max(0, last - (HEIGHT - 4));
  return over === 0 ? down : down.map((line) => ({ ...line, wordY: line.wordY - over }));
}
