import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { buildDesign, buildWording } from '../../../test/workshop/build-design.ts';
import { buildPng } from '../../../test/workshop/build-png.ts';
import { printTools } from '../../../test/workshop/print-tools.ts';
import {
  extentMm,
  inkInRing,
  inkRows,
  pdfInfo,
  renderPage,
  textOfPdf,
} from '../../../test/workshop/render-pdf.ts';
import { must } from '../../core/problem.ts';
import {
  composePieces,
  type DesignPiece,
  type LabelWording,
  layoutOnSheet,
  layoutPiece,
  type PieceLayout,
  plainSheetFor,
  type Surface,
} from '../layout/index.ts';
import { paintDocument } from './paint-document.ts';

const createdAt = '2026-11-26T09:00:00Z';

function layout(piece: Partial<DesignPiece>, wording: Partial<LabelWording> = {}): PieceLayout {
  const whole: DesignPiece = { id: 'tin', role: 'whole', surface, ...piece };
  const pieces: DesignPiece[] = [whole, { id: 'rest', role: 'whole', surface }];
  const [first] = must(composePieces(buildDesign({ pieces }), buildWording(wording)));
  if (first === undefined) throw new Error('a design has a piece');
  return must(layoutPiece(first, printTools));
}

const surface: Surface = { shape: 'rectangle', widthMm: 90, heightMm: 90 };

const paint = (piece: PieceLayout, copies = 1): Promise<Uint8Array> =>
  paintDocument(
    must(layoutOnSheet([piece], plainSheetFor(piece.surface), { title: 'Tin', copies })),
    createdAt,
  );

/** What a reader of codes finds on the printed page; it must be installed, since nothing else can tell. */
function readCodes(pdf: Uint8Array): string[] {
  const folder = mkdtempSync(join(tmpdir(), 'gramwright-code-'));
  try {
    const file = join(folder, 'label');
    writeFileSync(`${file}.pdf`, pdf);
    execFileSync('pdftoppm', ['-png', '-r', '300', '-singlefile', `${file}.pdf`, file]);
    const found = execFileSync('zbarimg', ['--quiet', `${file}.png`], { stdio: ['ignore', 'pipe', 'pipe'] });
    return found.toString('utf8').trim().split('\n');
  } finally {
    rmSync(folder, { recursive: true });
  }
}

describe('codes on the printed label', () => {
  it('give the link back to a reader, byte for byte', async () => {
    const code = { kind: 'digital-link', domain: 'larkfold.example', gtin: '9506000134352' } as const;
    expect(readCodes(await paint(layout({ code }, { batch: 'A/1%' })))).toEqual([
      'QR-Code:https://larkfold.example/01/09506000134352/10/A%2F1%25?17=270531',
    ]);
  });

  it('give lot and date back from a small sticker, in the smallest size', async () => {
    const small = { shape: 'rectangle', widthMm: 40, heightMm: 14 } as const;
    const sticker = layout({ role: 'sticker', surface: small, code: { kind: 'in-house' } });
    expect(sticker.moduleMm).toBe(0.4);
    expect(readCodes(await paint(sticker))).toEqual(['QR-Code:CO-0418 2027-05-31']);
  });

  it.each([
    [0.33, surface],
    [0.264, { shape: 'rectangle', widthMm: 60, heightMm: 25 }],
  ] as const)('give an article number back from bars of %d mm', async (moduleMm, on) => {
    const code = { kind: 'ean-13', gtin: '9506000134352' } as const;
    const drawn = layout({
      code,
      surface: on,
      ...(on === surface ? {} : { role: 'sticker', elements: ['batch'] }),
    });
    expect(drawn.moduleMm).toBe(moduleMm);
    expect(readCodes(await paint(drawn))).toEqual(['EAN-13:9506000134352']);
  });
});

describe('the printed piece', () => {
  // Directive 76/211/EEC, Annex I 3.1 and SI 2006/659: 3 mm for figures of 80 g and for the estimated sign.
  // Tolerance: two pixels of a 600 dpi raster, 0.085 mm.
  it('has figures and estimated sign as high as it says, measured on the page', async () => {
    const piece = layout(
      { role: 'front', surface: { shape: 'round', diameterMm: 66 } },
      { content: { grams: '80', figureHeightMm: 3, hasEMark: true } },
    );
    const raster = renderPage(await paint(piece), 600);
    const sheet = plainSheetFor(piece.surface);
    const item = piece.items.find((each) => each.element === 'tin.content' && each.kind === 'text');
    if (item?.kind !== 'text') throw new Error('no content');
    const heightOf = (from: number, to: number): number => {
      const face = printTools.faces.bold;
      const x = (count: number): number =>
        sheet.leftMm + item.xMm + face.advanceOf([...item.text].slice(0, count).join('')) * item.sizeMm;
      const base = sheet.topMm + item.baselineMm;
      return extentMm(
        inkRows(raster, { left: x(from), right: x(to), top: base - 4.4, bottom: base + 1 }),
        raster,
      );
    };
    expect(item.text).toBe('80 g ℮');
    expect(Math.abs(heightOf(0, 1) - (piece.figureHeightMm ?? 0))).toBeLessThan(0.085);
    expect(heightOf(0, 1)).toBeGreaterThanOrEqual(3);
    expect(heightOf(5, 6)).toBeGreaterThanOrEqual(3);
    expect(Math.abs(heightOf(5, 6) - (piece.eMarkHeightMm ?? 0))).toBeLessThan(0.085);
  });

  it('draws its symbols as ink, and keeps all of it off the cut', async () => {
    const piece = layout(
      { role: 'back', surface: { shape: 'round', diameterMm: 66 } },
      { openedMonths: 12, durability: { date: '2027-05-15', sign: 'hourglass' } },
    );
    const raster = renderPage(await paint(piece), 300);
    const { leftMm, topMm } = plainSheetFor(piece.surface);
    expect(inkInRing(raster, leftMm + 33, topMm + 33, 31.1, 34)).toBe(0);
    for (const element of ['tin.hourglass', 'tin.opened']) {
      const path = piece.items.find((item) => item.element === element);
      if (path?.kind !== 'path') throw new Error(`no ${element}`);
      const area = {
        left: leftMm + path.xMm,
        top: topMm + path.yMm,
        right: leftMm + path.xMm + 2,
        bottom: topMm + path.yMm + 3,
      };
      expect(inkRows(raster, area).length, element).toBeGreaterThan(5);
    }
  });

  it('holds its words as text and says of the code what it holds', async () => {
    const pdf = await paint(layout({ code: { kind: 'in-house' } }));
    expect(textOfPdf(pdf).replace(/\s+/g, ' ')).toContain('Best used before the end of 05/2027');
    expect(pdfInfo(pdf)).toMatch(/Tagged:\s+yes/);
    expect(pdfInfo(pdf, '-struct')).toContain('Figure');
  });

  it('draws letters with marks that the font moves', async () => {
    const text = textOfPdf(await paint(layout({}, { name: 'x\u0304 balm' })));
    expect(text).toContain('balm');
  });

  it('gives the same bytes each time, with artwork too', async () => {
    const hash = async (piece: PieceLayout): Promise<string> =>
      createHash('sha256')
        .update(await paint(piece, 3))
        .digest('hex');
    const code = { kind: 'in-house' } as const;
    const artwork = { bytes: buildPng(900, 900, true), use: 'background', bleedMm: 2 } as const;
    for (const piece of [{ code }, { code, artwork }])
      expect(await hash(layout(piece))).toBe(await hash(layout(piece)));
  });
});

describe('artwork', () => {
  const face: Surface = { shape: 'round', diameterMm: 60 };
  const piece = (bytes: Uint8Array, use: 'background' | 'whole-face' = 'whole-face') =>
    layout({ role: 'front', surface: face, artwork: { bytes, use, bleedMm: 2 } });

  it('is cut to the outline and its bleed, measured on the page', async () => {
    const drawn = piece(buildPng(800, 600));
    const raster = renderPage(await paint(drawn), 300);
    const { leftMm, topMm } = plainSheetFor(face);
    const rows = inkRows(raster, {
      left: leftMm + 29,
      right: leftMm + 31,
      top: topMm - 6,
      bottom: topMm + 66,
    });
    // 60 mm and 2 mm of bleed on either side; tolerance two pixels of a 300 dpi raster.
    expect(Math.abs(extentMm(rows, raster) - 64)).toBeLessThan(0.17);
  });

  it('leaves white under words and a code that can still be read', async () => {
    const artwork = { bytes: buildPng(900, 900), use: 'background', bleedMm: 2 } as const;
    const pdf = await paint(layout({ artwork, code: { kind: 'in-house' } }));
    expect(readCodes(pdf)).toEqual(['QR-Code:CO-0418 2027-05-31']);
  });

  // 64 mm at 200 dots an inch are 503.9 pixels.
  it('is noted as coarse below 200 dots an inch, and its words as not measured', () => {
    expect(piece(buildPng(503, 600)).notes.map(({ code }) => code)).toEqual([
      'artwork-coarse',
      'artwork-words-not-measured',
    ]);
    expect(piece(buildPng(504, 600), 'background').notes).toEqual([]);
  });
});
