import { describe, expect, it } from 'vitest';
import { buildPaper, numberedRows } from '../../../test/workshop/build-paper.ts';
import { inkRows, pdfFonts, pdfInfo, renderPage, textOfPdf } from '../../../test/workshop/render-pdf.ts';
import { must } from '../../core/problem.ts';
import { layoutPaper, type Paper, type PlacedText } from '../layout/index.ts';
import { loadFaces } from './load-faces.ts';
import { paintPaperPdf } from './paint-paper-pdf.ts';

const columns = [
  { title: 'Lot', align: 'left' },
  { title: 'What it is', align: 'left' },
  { title: 'Grams', align: 'right', isStrong: true },
] as const;

const full: Paper = buildPaper({
  subtitle: 'Everything that was weighed',
  banner: 'Trial batch. Never for sale.',
  cautions: ['Open away from the flame.'],
  tables: [
    {
      heading: 'Fats',
      columns,
      rows: [['SB-07', { text: 'Shea butter', remark: 'Use first.' }, '640']],
      totals: ['', 'In all', '640'],
    },
  ],
  notes: ['Weighed on the big scale.'],
  writingSpaces: [{ label: 'Anything else:', lines: 2 }],
  signatures: ['Weighed by, date', 'Checked by, date'],
});

describe('the printed paper', () => {
  it('leaves ink in the box of every text', async () => {
    const raster = renderPage(must(await paintPaperPdf(full)), 300);
    const page = must(layoutPaper(full, loadFaces())).pages[0];
    const texts = page?.items.filter((item): item is PlacedText => item.kind === 'text') ?? [];
    expect(texts.length).toBeGreaterThan(15);
    expect(texts.filter(({ ink }) => inkRows(raster, ink).length === 0)).toEqual([]);
    expect(inkRows(raster, { left: 18, right: 192, top: 220, bottom: 276 })).toEqual([]);
  });

  it('is tagged, titled and read in order', async () => {
    const pdf = must(await paintPaperPdf(full));
    expect(pdfInfo(pdf)).toMatch(/Tagged:\s+yes/);
    expect(pdfInfo(pdf)).toMatch(/Title:\s+Stock on the shelf/);
    const structure = pdfInfo(pdf, '-struct-text');
    const order = [
      ...[
        'H1',
        'Stock on the shelf',
        'Trial batch',
        'Counted on 25',
        'Open away',
        'H2',
        'Fats',
        'Table',
        'TH',
        'Lot',
      ],
      ...[
        'TD',
        'SB-07',
        'Shea butter',
        'Use first.',
        'In all',
        'Anything else:',
        'Weighed on the',
        'Weighed by',
      ],
    ];
    let from = 0;
    for (const words of order) {
      const found = structure.indexOf(words, from);
      expect(found, words).toBeGreaterThanOrEqual(from);
      from = found + words.length;
    }
    expect(structure).not.toContain('Page 1 of 1');
    for (const font of pdfFonts(pdf).trim().split('\n').slice(2)) expect(font).toMatch(/yes yes yes/);
  });

  it('prints a table of no rows and says so', async () => {
    const text = textOfPdf(must(await paintPaperPdf(buildPaper({ tables: [{ columns, rows: [] }] }))));
    expect(text).toContain('What it is');
    expect(text).toContain('Nothing in this list.');
    expect(text).toContain('Page 1 of 1');
  });

  it('prints 200 rows over pages, with the head on each and no row lost', async () => {
    const pdf = must(await paintPaperPdf(buildPaper({ tables: [{ columns, rows: numberedRows(200) }] })));
    const pages = textOfPdf(pdf)
      .split('\f')
      .filter((page) => page.trim() !== '');
    expect(pages.length).toBeGreaterThan(3);
    pages.forEach((page, index) => {
      expect(page).toContain('What it is');
      expect(page).toContain(`Page ${index + 1} of ${pages.length}`);
    });
    const lots = [...pages.join('\n').matchAll(/Lot (\d+)\b/g)].map(([, number]) => Number(number));
    expect(lots).toEqual(Array.from({ length: 200 }, (_, index) => index + 1));
  });

  it('gives the same bytes twice', async () => {
    const [first, second] = [must(await paintPaperPdf(full)), must(await paintPaperPdf(full))];
    expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
  });

  it('refuses a character that the font lacks, with its cell', async () => {
    const rows = [['SB-07', 'زبدة', '640']];
    const painted = await paintPaperPdf(buildPaper({ tables: [{ columns, rows }] }));
    expect(painted.ok).toBe(false);
    if (painted.ok) return;
    expect(painted.problems.map(({ code, where }) => [code, where])).toEqual(
      Array.from({ length: 4 }, () => ['glyph-missing', 'tables[0].rows[0][1]']),
    );
  });
});
