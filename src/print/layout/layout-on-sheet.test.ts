import { describe, expect, it } from 'vitest';
import { must } from '../../core/problem.ts';
import { layoutOnSheet, placeOn, positionAfter } from './layout-on-sheet.ts';
import type { PieceLayout } from './piece-layout.ts';
import { plainSheetFor } from './plain-sheet.ts';
import type { SheetGeometry, SheetRun } from './sheet-geometry.ts';

/** Invented: three across, eight down on A4, with a pitch that no binary number holds. */
const sheet: SheetGeometry = {
  pageWidthMm: 210,
  pageHeightMm: 297,
  columns: 3,
  rows: 8,
  leftMm: 7.2,
  topMm: 12.9,
  pitchAcrossMm: 66.1,
  pitchDownMm: 33.9,
  label: { shape: 'rectangle', widthMm: 63.5, heightMm: 33.9, cornerRadiusMm: 2 },
};

/** One square of a millimetre in the piece's own corner tells where it was put. */
const pieceOf = (widthMm: number, heightMm: number, id = 'lot'): PieceLayout => ({
  id,
  role: 'sticker',
  surface: { shape: 'rectangle', widthMm, heightMm },
  size: { shape: 'rectangle', widthMm, heightMm },
  items: [{ kind: 'boxes', boxes: [[0, 0, 1, 1]], xMm: 0, yMm: 0, tone: 'ink', element: `${id}.code` }],
  smallestXHeightMm: 1,
  figureHeightMm: null,
  eMarkHeightMm: null,
  moduleMm: null,
  bleedMm: 0,
  alts: { [`${id}.code`]: 'code' },
  notes: [],
});
const full = pieceOf(63.5, 33.9);

const placesOn = (run: Partial<SheetRun>, pieces = [full]) =>
  must(layoutOnSheet(pieces, sheet, { title: 'Sheet', copies: 1, ...run })).pages.map(({ items }) =>
    items.flatMap((item) => (item.kind === 'boxes' ? [[item.xMm, item.yMm] as const] : [])),
  );
function codesOf(change: Partial<SheetGeometry>, run: Partial<SheetRun> = {}, pieces = [full]): string[] {
  const result = layoutOnSheet(pieces, { ...sheet, ...change }, { title: 'Sheet', copies: 1, ...run });
  return result.ok ? [] : result.problems.map(({ code, where }) => `${code} ${where}`);
}

describe('layoutOnSheet', () => {
  it('puts every label where the sheet has it, to a hundredth of a millimetre', () => {
    const [places = []] = placesOn({ copies: 24 });
    expect(places).toHaveLength(24);
    places.forEach(([x, y], index) => {
      expect(x).toBeCloseTo(7.2 + 66.1 * (index % 3), 2);
      expect(y).toBeCloseTo(12.9 + 33.9 * Math.floor(index / 3), 2);
    });
  });

  it('begins where a begun sheet goes on, and on the next sheet at the first', () => {
    const [first = [], second = []] = placesOn({ copies: 4, firstPosition: 23 });
    expect(first).toHaveLength(2);
    expect(first[0]?.[0]).toBeCloseTo(7.2 + 66.1, 2);
    expect(first[0]?.[1]).toBeCloseTo(12.9 + 7 * 33.9, 2);
    expect(second.map(([x]) => x)).toEqual([7.2, 73.3]);
    expect(positionAfter(sheet, 23, 4)).toBe(3);
    expect(positionAfter(sheet, 23, 2)).toBe(1);
  });

  it('moves everything by the offset of the printer', () => {
    const [places = []] = placesOn({ offsetMm: { across: -0.8, down: 1.25 } });
    expect(places[0]?.[0]).toBeCloseTo(6.4, 2);
    expect(places[0]?.[1]).toBeCloseTo(14.15, 2);
  });

  it('puts a smaller piece into the middle of its label, one piece after the other', () => {
    const [places = []] = placesOn({ copies: 2 }, [pieceOf(30, 15, 'a'), pieceOf(63.5, 33.9, 'b')]);
    expect(places[0]?.[0]).toBeCloseTo(7.2 + 16.75, 2);
    expect(places[0]?.[1]).toBeCloseTo(12.9 + 9.45, 2);
    expect(places[2]?.[0]).toBeCloseTo(7.2 + 2 * 66.1, 2);
  });

  it('turns a piece by a quarter where it fits no other way, in the middle of its label', () => {
    const { pages } = must(layoutOnSheet([pieceOf(30, 60)], sheet, { title: 'Sheet', copies: 2 }));
    const [first, second] = pages[0]?.items ?? [];
    // The label begins at 7.2 and 12.9 mm; turned, the piece is 60 mm wide and 30 mm high, and its own corner is its right one.
    const right = 7.2 + (63.5 - 60) / 2 + 60;
    const top = 12.9 + (33.9 - 30) / 2;
    expect(first).toMatchObject({ kind: 'boxes' });
    expect(first?.turnedAbout?.xMm).toBeCloseTo(right, 2);
    expect(first?.turnedAbout?.yMm).toBeCloseTo(top, 2);
    expect(first?.kind === 'boxes' && first.xMm).toBeCloseTo(right, 2);
    expect(second?.turnedAbout?.xMm).toBeCloseTo(right + 66.1, 2);
    expect(codesOf({}, {}, [pieceOf(33.9, 63.5)])).toEqual([]);
    expect(codesOf({}, {}, [pieceOf(33.92, 63.5)])).toEqual(['piece-larger-than-label lot']);
    const [upright] = must(layoutOnSheet([full], sheet, { title: 'Sheet', copies: 1 })).pages[0]?.items ?? [];
    expect(upright?.turnedAbout).toBeUndefined();
  });

  it('keeps a paragraph or a picture for each element of each label', () => {
    const { structure } = must(layoutOnSheet([full], sheet, { title: 'Sheet', copies: 3 }));
    expect(structure.children).toHaveLength(3);
    expect(structure.children[0]?.children).toEqual([{ type: 'Figure', alt: 'code', children: [] }]);
  });

  it('refuses a label that is larger than those of the sheet, at a hundredth of a millimetre', () => {
    expect(codesOf({}, {}, [pieceOf(63.52, 33.9)])).toEqual(['piece-larger-than-label lot']);
    expect(codesOf({}, {}, [pieceOf(63.5, 33.9)])).toEqual([]);
    const roundLabel = {
      label: { shape: 'round', diameterMm: 50 },
      pitchAcrossMm: 60,
      pitchDownMm: 50,
    } as const;
    const rows = { ...roundLabel, rows: 5 };
    expect(codesOf(rows, {}, [pieceOf(40, 30)])).toEqual([]);
    expect(codesOf(rows, {}, [pieceOf(40, 30.1)])).toEqual(['piece-larger-than-label lot']);
  });

  it('refuses a first position beyond the last, counts and offsets that cannot be', () => {
    expect(codesOf({}, { firstPosition: 24 })).toEqual([]);
    for (const firstPosition of [0, 25, 1.5, Number.NaN])
      expect(codesOf({}, { firstPosition })).toEqual(['first-position-wrong firstPosition']);
    for (const copies of [0, 501, 1.5]) expect(codesOf({}, { copies })).toEqual(['copies-wrong copies']);
    expect(codesOf({}, { offsetMm: { across: 10, down: -10 } })).toEqual([]);
    expect(codesOf({}, { offsetMm: { across: 10.1, down: Number.NaN } })).toEqual([
      'sheet-offset-wrong offsetMm.across',
      'sheet-offset-wrong offsetMm.down',
    ]);
  });

  it('refuses a sheet whose labels overlap or run off the page', () => {
    expect(codesOf({ pitchAcrossMm: 63 })).toEqual(['sheet-labels-overlap pitchAcrossMm']);
    expect(codesOf({ topMm: 25.8 })).toEqual([]);
    expect(codesOf({ topMm: 25.9 })).toEqual(['sheet-beyond-page rows']);
    expect(codesOf({ columns: 0, leftMm: -1, pageWidthMm: Number.NaN })).toEqual([
      'sheet-measure-wrong pageWidthMm',
      'sheet-measure-wrong columns',
      'sheet-measure-wrong leftMm',
    ]);
  });

  it('fills plain A4 from the middle for cutting by hand', () => {
    const plain = plainSheetFor({ shape: 'round', diameterMm: 66 });
    expect([plain.columns, plain.rows]).toEqual([2, 4]);
    const [left, top] = placeOn(plain, 7);
    expect(left + 66 + plain.leftMm).toBeCloseTo(210, 2);
    expect(top + 66 + plain.topMm).toBeCloseTo(297, 2);
  });
});
