import { done, problem, type Result, refused } from '../../../core/problem.ts';
import { readDecimal } from '../../../core/quantity/index.ts';
import { readWhole } from '../../show/read-whole.ts';
import type { LabelSheet } from './label.ts';

type SheetDetails = LabelSheet['details'];

/** What a ruler says of a sheet, as it is typed. */
export interface SheetDraft {
  readonly name: string;
  readonly pageWidthMm: string;
  readonly pageHeightMm: string;
  readonly columns: string;
  readonly rows: string;
  readonly leftMm: string;
  readonly topMm: string;
  readonly pitchAcrossMm: string;
  readonly pitchDownMm: string;
  readonly shape: SheetDetails['geometry']['label']['shape'];
  readonly diameterMm: string;
  readonly widthMm: string;
  readonly heightMm: string;
  readonly cornerRadiusMm: string;
  readonly across: string;
  readonly down: string;
  readonly isTakenOut: boolean;
}

/** A4 (ISO 216); everything else has to be measured. */
export const EMPTY_SHEET: SheetDraft = {
  name: '',
  pageWidthMm: '210',
  pageHeightMm: '297',
  columns: '',
  rows: '',
  leftMm: '',
  topMm: '',
  pitchAcrossMm: '',
  pitchDownMm: '',
  shape: 'rectangle',
  diameterMm: '',
  widthMm: '',
  heightMm: '',
  cornerRadiusMm: '0',
  across: '0',
  down: '0',
  isTakenOut: false,
};

export function draftOfSheet({ name, geometry, offsetMm, isTakenOut }: SheetDetails): SheetDraft {
  const { label, ...grid } = geometry;
  const typed = (figures: object) =>
    Object.fromEntries(Object.entries(figures).map(([key, value]) => [key, String(value)]));
  return {
    ...EMPTY_SHEET,
    ...typed(grid),
    ...typed(label),
    ...typed(offsetMm),
    shape: label.shape,
    name,
    isTakenOut,
  };
}

const LABEL_MEASURES = {
  round: ['diameterMm'],
  rectangle: ['widthMm', 'heightMm', 'cornerRadiusMm'],
} as const;
const GRID = ['pageWidthMm', 'pageHeightMm', 'leftMm', 'topMm', 'pitchAcrossMm', 'pitchDownMm'] as const;

/** A single column has no distance to the next. */
const isNeeded = (draft: SheetDraft, key: (typeof GRID)[number]): boolean =>
  !(key === 'pitchAcrossMm' && draft.columns.trim() === '1') &&
  !(key === 'pitchDownMm' && draft.rows.trim() === '1');

const readIn = (typed: string, where: string): Result<number> => {
  const read = readDecimal(typed, where);
  return read.ok ? done(read.value.toNumber()) : read;
};

export function readSheetDraft(draft: SheetDraft): Result<SheetDetails> {
  const at = 'details.geometry';
  const { shape } = draft;
  const reads: readonly (readonly [string, Result<number>])[] = [
    ...GRID.map((key) => [key, isNeeded(draft, key) ? readIn(draft[key], `${at}.${key}`) : done(0)] as const),
    ['columns', readWhole(draft.columns, `${at}.columns`, 1)],
    ['rows', readWhole(draft.rows, `${at}.rows`, 1)],
  ];
  const label = LABEL_MEASURES[shape].map((key) => [key, readIn(draft[key], `${at}.label.${key}`)] as const);
  const offset = (['across', 'down'] as const).map(
    (key) => [key, readIn(draft[key], `details.offsetMm.${key}`)] as const,
  );
  const problems = [
    ...(draft.name.trim() === '' ? [problem('text-missing', 'details.name')] : []),
    ...[...reads, ...label, ...offset].flatMap(([, read]) => (read.ok ? [] : read.problems)),
  ];
  if (problems.length > 0) return refused(...problems);
  return done({
    name: draft.name,
    geometry: { ...valuesOf(reads), label: { shape, ...valuesOf(label) } },
    offsetMm: valuesOf(offset),
    isTakenOut: draft.isTakenOut,
  } as SheetDetails);
}

const valuesOf = (reads: readonly (readonly [string, Result<number>])[]): Readonly<Record<string, number>> =>
  Object.fromEntries(reads.flatMap(([key, read]) => (read.ok ? [[key, read.value]] : [])));
