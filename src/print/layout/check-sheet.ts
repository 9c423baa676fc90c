import { type Problem, problem } from '../../core/problem.ts';
import { MOST_COPIES } from './layout-cut-sheet.ts';
import { type FaceSize, heightOf, widthOf } from './outline.ts';
import type { PieceLayout } from './piece-layout.ts';
import type { SheetGeometry, SheetRun } from './sheet-geometry.ts';
import { turnedSize } from './turn.ts';

/** Everything that can be refused before a label is put on a sheet. */
export function checkSheetRun(
  pieces: readonly PieceLayout[],
  sheet: SheetGeometry,
  run: SheetRun,
): Problem[] {
  const wrong = checkSheet(sheet);
  return wrong.length > 0 ? wrong : [...checkFit(pieces, sheet), ...checkRun(sheet, run)];
}

/** A3 (ISO 216): no sheet of labels for a desk is larger. */
const LARGEST_MM = 420;
const MOST_IN_A_ROW = 50;
/** A ruler measures to half a millimetre, and sums of many pitches miss by less. */
const HAIR_MM = 0.01;

/** Whether the geometry of a sheet can be: what a person measured wrong shows here. */
export function checkSheet(sheet: SheetGeometry): Problem[] {
  const { columns, rows, leftMm, topMm, pageWidthMm, pageHeightMm } = sheet;
  const between = (field: string, found: number, least: number, most: number, isWhole = false): Problem[] =>
    Number.isFinite(found) && found >= least && found <= most && (!isWhole || Number.isInteger(found))
      ? []
      : [problem('sheet-measure-wrong', field, { found: String(found), allowed: `${least} to ${most}` })];
  const measures = [
    ...between('pageWidthMm', pageWidthMm, 20, LARGEST_MM),
    ...between('pageHeightMm', pageHeightMm, 20, LARGEST_MM),
    ...between('columns', columns, 1, MOST_IN_A_ROW, true),
    ...between('rows', rows, 1, MOST_IN_A_ROW, true),
    ...between('leftMm', leftMm, 0, LARGEST_MM),
    ...between('topMm', topMm, 0, LARGEST_MM),
    ...labelMeasures(sheet.label).flatMap(([field, mm]) => between(field, mm, 5, LARGEST_MM)),
    ...(columns > 1 ? between('pitchAcrossMm', sheet.pitchAcrossMm, 5, LARGEST_MM) : []),
    ...(rows > 1 ? between('pitchDownMm', sheet.pitchDownMm, 5, LARGEST_MM) : []),
  ];
  return measures.length > 0 ? measures : [...checkPitch(sheet), ...checkEdges(sheet)];
}

const labelMeasures = (label: FaceSize): (readonly [string, number])[] =>
  label.shape === 'round'
    ? [['label.diameterMm', label.diameterMm]]
    : [
        ['label.widthMm', label.widthMm],
        ['label.heightMm', label.heightMm],
      ];

function checkPitch({ columns, rows, pitchAcrossMm, pitchDownMm, label }: SheetGeometry): Problem[] {
  const narrow = (field: string, count: number, found: number, allowed: number): Problem[] =>
    count === 1 || found >= allowed - HAIR_MM
      ? []
      : [problem('sheet-labels-overlap', field, { found, allowed })];
  return [
    ...narrow('pitchAcrossMm', columns, pitchAcrossMm, widthOf(label)),
    ...narrow('pitchDownMm', rows, pitchDownMm, heightOf(label)),
  ];
}

function checkEdges(sheet: SheetGeometry): Problem[] {
  const { columns, rows, leftMm, topMm, pitchAcrossMm, pitchDownMm, label } = sheet;
  const right = leftMm + (columns - 1) * pitchAcrossMm + widthOf(label);
  const bottom = topMm + (rows - 1) * pitchDownMm + heightOf(label);
  const beyond = (field: string, found: number, allowed: number): Problem[] =>
    found <= allowed + HAIR_MM
      ? []
      : [problem('sheet-beyond-page', field, { found: hundredths(found), allowed })];
  return [...beyond('columns', right, sheet.pageWidthMm), ...beyond('rows', bottom, sheet.pageHeightMm)];
}

const hundredths = (mm: number): number => Math.round(mm * 100) / 100;

const checkFit = (pieces: readonly PieceLayout[], sheet: SheetGeometry): Problem[] =>
  pieces.flatMap((piece) => judgeFit(piece, sheet) ?? []);

/** Whether a piece fits on a label of this sheet; undefined: it does. */
export const judgeFit = (
  { id, size }: Pick<PieceLayout, 'id' | 'size'>,
  { label }: SheetGeometry,
): Problem | undefined =>
  fitsSomehow(size, label)
    ? undefined
    : problem('piece-larger-than-label', id, { found: describe(size), allowed: describe(label) });

/** As it is, or turned by a quarter. */
const fitsSomehow = (size: FaceSize, label: FaceSize): boolean =>
  fitsOn(size, label) || fitsOn(turnedSize(size), label);

/** A rectangle on a round label fits by its diagonal. */
export function fitsOn(size: FaceSize, label: FaceSize): boolean {
  if (label.shape === 'rectangle' || size.shape === 'round') {
    return widthOf(size) <= widthOf(label) + HAIR_MM && heightOf(size) <= heightOf(label) + HAIR_MM;
  }
  return Math.hypot(size.widthMm, size.heightMm) <= label.diameterMm + HAIR_MM;
}

const describe = (size: FaceSize): string =>
  size.shape === 'round' ? `${size.diameterMm} mm` : `${size.widthMm} x ${size.heightMm} mm`;

/** A printer that is off by more has its paper in wrong. Common practice, no source. */
const LARGEST_OFFSET_MM = 10;

function checkRun({ columns, rows }: SheetGeometry, run: SheetRun): Problem[] {
  const { copies, firstPosition = 1, offsetMm = { across: 0, down: 0 } } = run;
  const isCount = Number.isInteger(copies) && copies >= 1 && copies <= MOST_COPIES;
  const isPosition = Number.isInteger(firstPosition) && firstPosition >= 1 && firstPosition <= columns * rows;
  const off = Object.entries(offsetMm).filter(([, mm]) => !(Math.abs(mm) <= LARGEST_OFFSET_MM));
  return [
    ...(isCount
      ? []
      : [problem('copies-wrong', 'copies', { found: String(copies), allowed: `1 to ${MOST_COPIES}` })]),
    ...(isPosition
      ? []
      : [
          problem('first-position-wrong', 'firstPosition', {
            found: String(firstPosition),
            allowed: columns * rows,
          }),
        ]),
    ...off.map(([field, mm]) =>
      problem('sheet-offset-wrong', `offsetMm.${field}`, {
        found: String(mm),
        allowed: LARGEST_OFFSET_MM,
      }),
    ),
  ];
}
