import { describe, expect, it } from 'vitest';
import { buildDesign, buildWording } from '../../../test/workshop/build-design.ts';
import { printTools } from '../../../test/workshop/print-tools.ts';
import {
  extentMm,
  inkColumns,
  inkInRing,
  inkRows,
  pdfFonts,
  pdfInfo,
  renderPage,
  textOfPdf,
} from '../../../test/workshop/render-pdf.ts';
import { must } from '../../core/problem.ts';
import {
  composePieces,
  layoutCutSheet,
  layoutPiece,
  type PieceLayout,
  type Surface,
} from '../layout/index.ts';
import { paintDocument } from './paint-document.ts';

const createdAt = '2026-11-25T09:00:00Z';
const TITLE = 'Cedar and orange body butter, batch CO-0418';

/** Front and back of one size. */
function piecesOf(surface: Surface): PieceLayout[] {
  const pieces = [
    { id: 'lid', role: 'front' as const, surface },
    { id: 'base', role: 'back' as const, surface },
  ];
  const composed = must(composePieces(buildDesign({ pieces }), buildWording({ openedMonths: 12 })));
  return composed.map((piece) => must(layoutPiece(piece, printTools)));
}
const round = (diameterMm: number): Surface => ({ shape: 'round', diameterMm });
const sheetOf = (surface: Surface, copies = 1) =>
  layoutCutSheet(piecesOf(surface), { title: TITLE, copies }, printTools.faces);
const paint = (surface: Surface, copies = 1, at = createdAt): Promise<Uint8Array> =>
  paintDocument(must(sheetOf(surface, copies)), at);

describe('labels on plain paper, to be cut', () => {
  it('keep all ink of a round piece 1.9 mm or more inside the cut', async () => {
    const raster = renderPage(await paint(round(66)), 300);
    for (const centre of [5 + 33, 5 + 66 + 1 + 33]) {
      expect(inkInRing(raster, centre, 17 + 33, 31.1, 32.7)).toBe(0);
      expect(inkInRing(raster, centre, 17 + 33, 0, 31)).toBeGreaterThan(1000);
    }
  });

  it('are cut at true size: the circle is 66 mm across and the bar 50 mm long', async () => {
    const raster = renderPage(await paint(round(66)), 600);
    const acrossMiddle = inkColumns(raster, { left: 4.5, right: 71.4, top: 49.8, bottom: 50.2 });
    expect(Math.abs(extentMm(acrossMiddle, raster) - 66)).toBeLessThan(0.2);
    const bar = inkColumns(raster, { left: 4, right: 57, top: 281.5, bottom: 283.5 });
    expect(Math.abs(extentMm(bar, raster) - 50)).toBeLessThan(0.1);
  });

  it('hold all their words as text, tagged, with title, language and embedded fonts', async () => {
    const pdf = await paint(round(66));
    const text = textOfPdf(pdf).replace(/\s+/g, ' ');
    for (const words of ['Rich moisturiser for dry skin', 'Batch CO-0418', 'This bar is 50 mm long.'])
      expect(text).toContain(words);
    expect(text).toContain('If the bar measures anything else, the labels are the wrong size.');
    expect(text).not.toContain('…');
    const info = pdfInfo(pdf);
    expect(info).toContain(TITLE);
    expect(info).toMatch(/Tagged:\s+yes/);
    expect(info).toMatch(/Page size:.*A4/);
    expect(Buffer.from(pdf).toString('latin1')).toContain('/Lang (en-GB)');
    const fonts = pdfFonts(pdf).trim().split('\n').slice(2);
    expect(fonts.length).toBe(3);
    for (const font of fonts) expect(font).toMatch(/SourceSans3-.*Identity-H\s+yes yes yes/);
    const structure = pdfInfo(pdf, '-struct-text');
    expect(structure).toContain('Larkfold Butters, 3 Mill Yard,');
    expect(structure).toContain('Figure');
  });

  it('are as many of each as asked for, over several sheets', async () => {
    const pdf = await paint(round(66), 10);
    expect(textOfPdf(pdf).match(/Batch CO-0418/g)).toHaveLength(10);
    expect(pdfInfo(pdf)).toMatch(/Pages:\s+3/);
  });

  it('stand as many on a sheet as fit at true size: of 62 mm twelve, measured on the page', async () => {
    const pdf = await paint(round(62), 7);
    expect(pdfInfo(pdf)).toMatch(/Pages:\s+2/);
    const raster = renderPage(pdf, 150);
    for (const x of [5, 74, 143]) {
      for (const y of [17, 83, 149, 215]) {
        expect(inkInRing(raster, x + 31, y + 31, 0, 29), `at ${x}, ${y}`).toBeGreaterThan(500);
        expect(inkInRing(raster, x + 31, y + 31, 29.2, 30.6), `at ${x}, ${y}`).toBe(0);
      }
    }
  });

  it('lie across where more fit so, and where they fit no other way', async () => {
    const two = await paint({ shape: 'rectangle', widthMm: 140, heightMm: 80 }, 2);
    expect(pdfInfo(two)).toMatch(/Pages:\s+1/);
    expect(pdfInfo(two)).toMatch(/Page size:\s+841\.89 x 595\.2/);
    const strip = must(sheetOf({ shape: 'wrap', circumferenceMm: 240, heightMm: 60, overlapMm: 6 }));
    expect(strip.pages.map(({ widthMm }) => widthMm)).toEqual([297]);
  });

  it('are turned where more fit so, measured on the page', async () => {
    // Of 120 x 60 mm: upright one in a row and four rows, across two in a row and two rows; turned upright three and two.
    const sheet = must(sheetOf({ shape: 'rectangle', widthMm: 120, heightMm: 60 }, 3));
    expect(sheet.pages.map(({ widthMm }) => widthMm)).toEqual([210]);
    const pdf = await paintDocument(sheet, createdAt);
    expect(textOfPdf(pdf).length).toBeGreaterThan(200);
    const raster = renderPage(pdf, 300);
    // A cut runs down for 120 mm at the left edge of the first, 5 mm from the paper's.
    const cut = inkRows(raster, { left: 4.8, right: 5.2, top: 18.2, bottom: 137.8 });
    expect(Math.abs(extentMm(cut, raster) - (137 - 18.2))).toBeLessThan(0.3);
  });

  it('lie together by kind where that takes less paper', () => {
    const tools = printTools;
    const pieces = must(
      composePieces(
        buildDesign({
          pieces: [
            {
              id: 'strip',
              role: 'whole',
              surface: { shape: 'wrap', circumferenceMm: 191, heightMm: 40, overlapMm: 5 },
            },
            { id: 'lot', role: 'sticker', surface: { shape: 'round', diameterMm: 45 } },
          ],
        }),
        buildWording({ openedMonths: 12 }),
      ),
    ).map((piece) => must(layoutPiece(piece, tools)));
    // A strip fills a row of 200 mm, and four stickers do. By copies a strip and a sticker take 93 mm of the 260: four sheets.
    // By kind eight strips and two rows of stickers take 480 mm: two.
    expect(must(layoutCutSheet(pieces, { title: TITLE, copies: 8 }, tools.faces)).pages).toHaveLength(2);
  });

  it('are refused where no paper is large enough, and in no copies or too many', () => {
    const [piece] = piecesOf({ shape: 'wrap', circumferenceMm: 290, heightMm: 60, overlapMm: 6 });
    if (!piece) throw new Error('a design has a piece');
    const heading = { title: TITLE, copies: 1 };
    expect(layoutCutSheet([piece], heading, printTools.faces)).toMatchObject({
      ok: false,
      problems: [{ code: 'piece-larger-than-paper', where: 'lid', found: '296 x 60 mm' }],
    });
    for (const copies of [0, 501, 1.5, Number.NaN])
      expect(sheetOf(round(66), copies)).toMatchObject({
        ok: false,
        problems: [{ code: 'copies-wrong', where: 'copies' }],
      });
  });

  it('are the same bytes for the same input, and others for another moment; a moment that is none throws', async () => {
    const [first, second] = [await paint(round(66)), await paint(round(66))];
    const later = await paint(round(66), 1, '2026-11-26T09:00:00Z');
    expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
    expect(Buffer.from(first).equals(Buffer.from(later))).toBe(false);
    await expect(paint(round(66), 1, 'today')).rejects.toThrow(RangeError);
  });
});
