import { describe, expect, it } from 'vitest';
import { buildLabel } from '../../../test/workshop/build-label.ts';
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
import { type Label, layoutLabel, layoutLabelSheet, type Page, type PlacedText } from '../layout/index.ts';
import { loadFaces } from './load-faces.ts';
import { paintLabelPdf } from './paint-label-pdf.ts';

const createdAt = '2026-11-25T09:00:00Z';
const faces = loadFaces();
const paint = async (label: Label, copies = 1): Promise<Uint8Array> =>
  must(await paintLabelPdf(label, { createdAt, copies }));

function firstPage(label: Label): Page {
  const sheet = must(layoutLabelSheet(must(layoutLabel(label, faces)), { title: 'Sheet', copies: 1 }, faces));
  const page = sheet.pages[0];
  if (page === undefined) throw new Error('a sheet has a page');
  return page;
}

const textsOf = (page: Page): PlacedText[] => page.items.filter((item) => item.kind === 'text');

function textOf(page: Page, element: string): PlacedText {
  const found = textsOf(page).find((item) => item.element === element);
  if (found === undefined) throw new Error(`no ${element} on the page`);
  return found;
}

const square = { shape: 'rectangle', widthMm: 80, heightMm: 55 } as const;

describe('the printed label', () => {
  // Heights by Directive 76/211/EEC, Annex I, 3.1: 2, 3, 4, 6 mm. Tolerance: two pixels of a 600 dpi raster, 0.085 mm.
  it.each([
    ['30 g', 2],
    ['80 g', 3],
    ['471 g', 4],
    ['1100 g', 6],
  ])(
    'prints the figures of %s at least %d mm high, measured on the page',
    async (declaredContentText, figureHeightMm) => {
      const label = buildLabel({ declaredContentText, figureHeightMm });
      const raster = renderPage(await paint(label), 600);
      const item = textOf(firstPage(label), 'front.declaredContentText');
      const figures = declaredContentText.replace(/\D+$/, '');
      const heights = [...figures].map((digit, index) => {
        const left = item.xMm + faces.bold.advanceOf(figures.slice(0, index)) * item.sizeMm;
        const right = left + faces.bold.advanceOf(digit) * item.sizeMm;
        const rows = inkRows(raster, { left, right, top: item.baselineMm - 12, bottom: item.baselineMm + 1 });
        // The brand, name and rule above leave white rows between: only the lowest unbroken run is the digit.
        const broken = rows.findLastIndex((row, place) => place > 0 && row - (rows[place - 1] ?? row) > 1);
        return extentMm(rows.slice(Math.max(0, broken)), raster);
      });
      const drawn = must(layoutLabel(label, faces)).figureHeightMm;
      expect(Math.min(...heights)).toBeGreaterThanOrEqual(figureHeightMm);
      expect(Math.abs(Math.min(...heights) - drawn)).toBeLessThan(0.085);
    },
  );

  it.each([
    ['round', buildLabel()],
    ['rectangular', buildLabel({ size: square }, { size: square })],
  ])('leaves ink for every single character of a %s label', async (_, label) => {
    const raster = renderPage(await paint(label), 600);
    const blank: string[] = [];
    for (const item of textsOf(firstPage(label))) {
      const face = faces[item.weight];
      [...item.text].forEach((character, index) => {
        const left = item.xMm + face.advanceOf([...item.text].slice(0, index).join('')) * item.sizeMm;
        const right = left + face.advanceOf(character) * item.sizeMm;
        const isBlank = inkRows(raster, { ...item.ink, left, right }).length === 0;
        if (isBlank && character !== ' ' && item.element !== 'sheet')
          blank.push(`${item.element}: ${character}`);
      });
    }
    expect(blank).toEqual([]);
    expect(inkRows(raster, { left: 150, right: 200, top: 200, bottom: 255 })).toEqual([]);
  });

  it('keeps all ink of a round face 1.9 mm or more inside the cut', async () => {
    const raster = renderPage(await paint(buildLabel()), 300);
    for (const centre of [5 + 33, 5 + 66 + 1 + 33]) {
      expect(inkInRing(raster, centre, 17 + 33, 31.1, 32.7)).toBe(0);
      expect(inkInRing(raster, centre, 17 + 33, 0, 31)).toBeGreaterThan(1000);
    }
  });

  it('cuts at true size: the circle is 66 mm across and the bar 50 mm long', async () => {
    const raster = renderPage(await paint(buildLabel()), 600);
    const acrossMiddle = inkColumns(raster, { left: 4.5, right: 71.4, top: 49.8, bottom: 50.2 });
    expect(Math.abs(extentMm(acrossMiddle, raster) - 66)).toBeLessThan(0.2);
    const bar = inkColumns(raster, { left: 4, right: 57, top: 281.5, bottom: 283.5 });
    expect(Math.abs(extentMm(bar, raster) - 50)).toBeLessThan(0.1);
  });

  it('holds all its words as text, tagged, with title, language and embedded fonts', async () => {
    const pdf = await paint(buildLabel());
    const text = textOfPdf(pdf).replace(/\s+/g, ' ');
    for (const words of [
      'Rich moisturiser for dry skin',
      '80 g',
      'Batch CO-0418',
      'This bar is 50 mm long.',
    ]) {
      expect(text).toContain(words);
    }
    const info = pdfInfo(pdf);
    expect(info).toMatch(/Title:\s+Cedar and orange body butter, batch CO-0418/);
    expect(info).toMatch(/Tagged:\s+yes/);
    expect(info).toMatch(/Page size:.*A4/);
    expect(Buffer.from(pdf).toString('latin1')).toContain('/Lang (en-GB)');
    const fonts = pdfFonts(pdf).trim().split('\n').slice(2);
    expect(fonts.length).toBe(3);
    for (const font of fonts) expect(font).toMatch(/SourceSans3-.*Identity-H\s+yes yes yes/);
    const structure = pdfInfo(pdf, '-struct-text');
    expect(structure).toContain('Larkfold Butters, 3 Mill Yard, Hollinsby HX0 0ZZ');
    expect(structure).toContain('Figure');
  });

  it('prints as many pairs as asked for, over several sheets', async () => {
    const pdf = await paint(buildLabel(), 10);
    expect(textOfPdf(pdf).match(/Batch CO-0418/g)).toHaveLength(10);
    expect(pdfInfo(pdf)).toMatch(/Pages:\s+3/);
  });

  it('puts as many on a sheet as fit at true size: of 62 mm twelve faces, measured on the page', async () => {
    const size = { shape: 'round', diameterMm: 62 } as const;
    const pdf = await paint(buildLabel({ size }, { size }), 7);
    expect(pdfInfo(pdf)).toMatch(/Pages:\s+2/);
    const raster = renderPage(pdf, 150);
    for (const x of [5, 74, 143]) {
      for (const y of [17, 83, 149, 215]) {
        expect(inkInRing(raster, x + 31, y + 31, 0, 29), `at ${x}, ${y}`).toBeGreaterThan(500);
        expect(inkInRing(raster, x + 31, y + 31, 29.2, 30.6), `at ${x}, ${y}`).toBe(0);
      }
    }
  });

  it('turns the sheet where more faces fit across', async () => {
    const size = { shape: 'rectangle', widthMm: 140, heightMm: 80 } as const;
    const pdf = await paint(buildLabel({ size }, { size }), 2);
    expect(pdfInfo(pdf)).toMatch(/Pages:\s+1/);
    expect(pdfInfo(pdf)).toMatch(/Page size:\s+841\.89 x 595\.2/);
    const middle = inkColumns(renderPage(pdf, 150), { left: 140, right: 156, top: 50, bottom: 52 });
    expect(middle.length, 'the cuts of both columns').toBeGreaterThan(0);
  });

  it('says beside the bar, to the last word, what it is for', async () => {
    const text = textOfPdf(await paint(buildLabel()));
    expect(text).toContain('If the bar measures anything else, the labels are the wrong size.');
    expect(text).not.toContain('…');
  });

  it('gives the same bytes for the same input, and others for another moment', async () => {
    const label = buildLabel();
    const [first, second] = [await paint(label), await paint(label)];
    const later = must(await paintLabelPdf(label, { createdAt: '2026-11-26T09:00:00Z' }));
    expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
    expect(Buffer.from(first).equals(Buffer.from(later))).toBe(false);
  });

  it('refuses a character that the font lacks rather than print a blank', async () => {
    const label = buildLabel({ productName: 'Cedar 🌲 butter' });
    const painted = await paintLabelPdf(label, { createdAt });
    expect(painted).toMatchObject({
      ok: false,
      problems: [
        {
          code: 'glyph-missing',
          where: 'front.productName',
          found: '🌲',
          parameters: { position: 7, codePoint: 'U+1F332' },
        },
      ],
    });
  });

  it('refuses no copies and too many', async () => {
    for (const copies of [0, 501, 1.5, Number.NaN]) {
      const painted = await paintLabelPdf(buildLabel(), { createdAt, copies });
      expect(painted).toMatchObject({ ok: false, problems: [{ code: 'copies-wrong', where: 'copies' }] });
    }
  });

  it('throws at a moment that is none: that is a mistake of the program', async () => {
    await expect(paintLabelPdf(buildLabel(), { createdAt: 'today' })).rejects.toThrow(RangeError);
  });
});
