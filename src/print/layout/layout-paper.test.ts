import { describe, expect, it } from 'vitest';
import { buildPaper, numberedRows } from '../../../test/workshop/build-paper.ts';
import { must } from '../../core/problem.ts';
import { loadFaces } from '../paint/index.ts';
import { layoutPaper } from './layout-paper.ts';
import { BODY_BOTTOM_MM } from './page-frame.ts';
import type { Paper } from './paper.ts';
import type { Page, PlacedText, PrintDocument } from './placed.ts';

const faces = loadFaces();
const layout = (paper: Paper): PrintDocument => must(layoutPaper(paper, faces));
const textsOf = (page: Page): PlacedText[] => page.items.filter((item) => item.kind === 'text');
const bodyOf = (document: PrintDocument): PlacedText[] =>
  document.pages.flatMap(textsOf).filter(({ element }) => element !== 'frame');

const columns = [
  { title: 'Lot', align: 'left' },
  { title: 'What it is', align: 'left' },
  { title: 'Grams', align: 'right', isStrong: true },
] as const;

describe('layoutPaper', () => {
  it('numbers its pages and keeps all text on them', () => {
    const document = layout(buildPaper({ tables: [{ columns, rows: numberedRows(120) }] }));
    const numbers = document.pages.map(
      (page) => textsOf(page).find(({ text }) => text.startsWith('Page '))?.text,
    );
    expect(numbers).toEqual(numbers.map((_, index) => `Page ${index + 1} of ${numbers.length}`));
    for (const { ink } of bodyOf(document)) {
      expect(ink.bottom).toBeLessThanOrEqual(BODY_BOTTOM_MM);
      expect(ink.left).toBeGreaterThan(17.5);
      expect(ink.right).toBeLessThan(192.5);
    }
  });

  it('sets the head of a table again on each page, as decoration after the first', () => {
    const document = layout(buildPaper({ tables: [{ heading: 'Fats', columns, rows: numberedRows(100) }] }));
    const heads = document.pages.map((page) => textsOf(page).filter(({ text }) => text === 'What it is'));
    expect(heads.length).toBeGreaterThan(2);
    expect(heads.map((found) => found.length)).toEqual(heads.map(() => 1));
    expect(heads.map(([head]) => head?.part !== undefined)).toEqual(heads.map((_, index) => index === 0));
  });

  it('leaves no heading alone at the foot of a page', () => {
    for (let count = 20; count < 40; count += 1) {
      const tables = [
        { columns, rows: numberedRows(count) },
        { heading: 'Second', columns, rows: numberedRows(3) },
      ];
      const document = layout(buildPaper({ tables }));
      const pageOf = (element: string): number =>
        document.pages.findIndex((page) => textsOf(page).some((item) => item.element === element));
      expect(pageOf('tables[1].heading')).toBe(pageOf('tables[1].rows[0][0]'));
    }
  });

  it('wraps long names within their column', () => {
    const name =
      'Caprylic and capric triglyceride from coconut, fractionated, deodorised, bought in the autumn';
    const row = ['MCT-3', `${name}, ${name}`, '98.0'];
    const texts = bodyOf(layout(buildPaper({ tables: [{ columns, rows: [row] }] })));
    const cell = texts.filter(({ element }) => element === 'tables[0].rows[0][1]');
    const grams = texts.find(({ element }) => element === 'tables[0].rows[0][2]');
    expect(cell.length).toBeGreaterThan(1);
    expect(cell.map(({ text }) => text).join(' ')).toBe(row[1]);
    expect(Math.max(...cell.map(({ ink }) => ink.right))).toBeLessThan(grams?.ink.left ?? 0);
  });

  it('says that a table of no rows has none, and counts nothing in its totals', () => {
    const texts = bodyOf(
      layout(buildPaper({ tables: [{ columns, rows: [], totals: ['', 'In all', '0'] }] })),
    );
    expect(texts.map(({ text }) => text)).toEqual(
      expect.arrayContaining(['Nothing in this list.', 'In all', '0']),
    );
  });

  it('carries a row that is taller than a page over to the next and loses no word', () => {
    const words = Array.from({ length: 3000 }, (_, index) => `word${index}`).join(' ');
    const document = layout(buildPaper({ tables: [{ columns, rows: [['A', words, '1']] }] }));
    const cell = bodyOf(document).filter(({ element }) => element === 'tables[0].rows[0][1]');
    expect(document.pages.length).toBeGreaterThan(2);
    expect(cell.map(({ text }) => text).join(' ')).toBe(words);
    for (const { ink } of cell) expect(ink.bottom).toBeLessThanOrEqual(BODY_BOTTOM_MM);
  });

  it('lets notes run over the end of a page', () => {
    const note = 'The balm was stirred, looked at and left alone. '.repeat(150).trim();
    const document = layout(buildPaper({ notes: [note] }));
    expect(document.pages.length).toBeGreaterThan(1);
    expect(
      bodyOf(document)
        .filter(({ element }) => element === 'notes[0]')
        .map(({ text }) => text)
        .join(' '),
    ).toBe(note);
  });

  it('refuses a fact that no page could hold', () => {
    const result = layoutPaper(buildPaper({ facts: [['Remark', 'and so on '.repeat(2000)]] }), faces);
    expect(result).toMatchObject({
      ok: false,
      problems: [{ code: 'paper-text-too-long', where: 'facts[0]' }],
    });
  });

  it('names every place in which the font lacks a character', () => {
    const paper = buildPaper({
      subtitle: '🌲',
      facts: [['🌲', 'x']],
      cautions: ['🌲'],
      tables: [
        {
          heading: '🌲',
          columns: [{ title: '🌲', align: 'left' }],
          rows: [[{ text: 'x', remark: '🌲' }]],
          totals: ['🌲'],
        },
      ],
      notes: ['fine', '🌲'],
      writingSpaces: [{ label: '🌲', lines: 1 }],
      signatures: ['🌲'],
      footer: '🌲',
    });
    const result = layoutPaper(paper, faces);
    expect(result.ok ? [] : result.problems.map(({ where }) => where)).toEqual([
      ...['subtitle', 'facts[0][0]', 'cautions[0]', 'tables[0].heading', 'tables[0].columns[0]'],
      ...[
        'tables[0].rows[0][0].remark',
        'tables[0].totals[0]',
        'notes[1]',
        'writingSpaces[0]',
        'signatures[0]',
        'footer',
      ],
    ]);
  });

  it('throws at a row with a cell too few: that is a mistake of the program', () => {
    const paper = buildPaper({ tables: [{ columns, rows: [['A', 'B']] }] });
    expect(() => layoutPaper(paper, faces)).toThrow(/2 cells for 3 columns/);
  });
});
