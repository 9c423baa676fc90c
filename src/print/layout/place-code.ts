import { labelPrintWords } from '../../words/index.ts';
import type { BarWidths, CodeMaker, QrSquares } from './code-maker.ts';
import {
  EAN_GUARD_MODULES,
  EAN_HEIGHT_MODULES,
  EAN_MODULES_MM,
  EAN_QUIET_LEFT_MODULES,
  EAN_QUIET_RIGHT_MODULES,
  QR_MODULES_MM,
  QR_QUIET_MODULES,
} from './code-rules.ts';
import type { Faces } from './face.ts';
import type { PieceCode } from './label-design.ts';
import { placeLine } from './place-line.ts';
import type { Placed, PlacedBoxes } from './placed.ts';
import { setLine } from './set-line.ts';
import type { Fixture } from './symbol-row.ts';

/** The code in each of the sizes that it may have, largest first, with its white; null where it cannot be encoded. */
export function drawCode(
  code: PieceCode,
  codes: CodeMaker,
  faces: Faces,
  element: string,
): readonly Fixture[] | null {
  if (code.kind === 'qr') {
    const squares = codes.qr(code.content);
    const alt = labelPrintWords.alt.qr(code.content);
    return squares && QR_MODULES_MM.map((moduleMm) => qrFixture(squares, moduleMm, element, alt));
  }
  const bars = codes.ean13(code.content);
  const alt = labelPrintWords.alt.ean13(code.content);
  return (
    bars && EAN_MODULES_MM.map((moduleMm) => eanFixture(bars, code.content, moduleMm, faces, element, alt))
  );
}

function qrFixture(squares: QrSquares, moduleMm: number, element: string, alt: string): Fixture {
  const sideMm = (squares.length + 2 * QR_QUIET_MODULES) * moduleMm;
  const quietMm = QR_QUIET_MODULES * moduleMm;
  const boxes = squares.flatMap((row, y) =>
    runsOf(row).map(([x, count]) => scaled([x, y, count, 1], moduleMm)),
  );
  return {
    element,
    alt,
    widthMm: sideMm,
    heightMm: sideMm,
    moduleMm,
    draw: (left, top) => [bars(boxes, left + quietMm, top + quietMm, element)],
  };
}

/** Dark squares side by side are one box. */
function runsOf(row: readonly boolean[]): [start: number, count: number][] {
  const runs: [number, number][] = [];
  row.forEach((isDark, x) => {
    const open = runs.at(-1);
    if (!isDark) return;
    if (open !== undefined && open[0] + open[1] === x) open[1] += 1;
    else runs.push([x, 1]);
  });
  return runs;
}

type BoxOf4 = readonly [number, number, number, number];
const scaled = ([x, y, w, h]: BoxOf4, by: number): BoxOf4 => [x * by, y * by, w * by, h * by];

const bars = (boxes: readonly BoxOf4[], xMm: number, yMm: number, element: string): PlacedBoxes => ({
  kind: 'boxes',
  boxes,
  xMm,
  yMm,
  tone: 'ink',
  element,
});

/** The guard bars of EAN-13 by their place among all bars: two at either end and in the middle. */
const GUARDS = new Set([0, 1, 14, 15, 28, 29]);
/** Of the figures below, in modules: a size that a person reads at an arm's length (2.75 mm at 0.33 mm, from memory). */
const FIGURES_EM_MODULES = 11;
const FIGURES_ROOM_MODULES = 9;

function eanFixture(
  widths: BarWidths,
  digits: string,
  moduleMm: number,
  faces: Faces,
  element: string,
  alt: string,
): Fixture {
  const modules = widths.reduce((sum, width) => sum + width, 0);
  const quietMm = EAN_QUIET_LEFT_MODULES * moduleMm;
  const boxes = barBoxes(widths, EAN_HEIGHT_MODULES).map((box) => scaled(box, moduleMm));
  return {
    element,
    alt,
    widthMm: (modules + EAN_QUIET_LEFT_MODULES + EAN_QUIET_RIGHT_MODULES) * moduleMm,
    heightMm: (EAN_HEIGHT_MODULES + FIGURES_ROOM_MODULES) * moduleMm,
    moduleMm,
    draw: (left, top) => [
      bars(boxes, left + quietMm, top, element),
      ...placeFigures(digits, left + quietMm, top, moduleMm, faces, element),
    ],
  };
}

function barBoxes(widths: BarWidths, heightModules: number): BoxOf4[] {
  let x = 0;
  return widths.flatMap((width, index): BoxOf4[] => {
    const left = x;
    x += width;
    if (index % 2 === 1) return [];
    const guard = GUARDS.has(index / 2) ? EAN_GUARD_MODULES : 0;
    return [[left, 0, width, heightModules + guard]];
  });
}

/** One figure in the white to the left, six between the left guards, six between the right ones. */
function placeFigures(
  digits: string,
  leftMm: number,
  topMm: number,
  moduleMm: number,
  faces: Faces,
  element: string,
): Placed[] {
  const groups: readonly (readonly [string, number])[] = [
    [digits.slice(0, 1), -6],
    [digits.slice(1, 7), 24.5],
    [digits.slice(7), 71.5],
  ];
  const sizeMm = FIGURES_EM_MODULES * moduleMm;
  return groups.flatMap(([text, middle]) => {
    const line = setLine([{ text, weight: 'regular', joiner: '', ending: '' }], sizeMm, faces);
    const xMm = leftMm + middle * moduleMm - line.widthMm / 2;
    const baselineMm = topMm + (EAN_HEIGHT_MODULES + FIGURES_ROOM_MODULES - 0.6) * moduleMm;
    return placeLine(line, { xMm, baselineMm, sizeMm, tone: 'ink', element }, faces);
  });
}
