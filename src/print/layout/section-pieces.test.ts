import { describe, expect, it } from 'vitest';
import { buildPaper, numberedRows } from '../../../test/workshop/build-paper.ts';
import { must } from '../../core/problem.ts';
import { loadFaces } from '../paint/index.ts';
import { layoutPaper } from './layout-paper.ts';
import { BODY_BOTTOM_MM, TEXT_WIDTH_MM } from './page-frame.ts';
import type { PaperSection } from './paper.ts';
import type { Part, PlacedText } from './placed.ts';

const faces = loadFaces();
const columns = [
  { title: 'Lot', align: 'left' },
  { title: 'Tub', align: 'left' },
  { title: 'Grams', align: 'right' },
] as const;
const lay = (sections: readonly PaperSection[]) => must(layoutPaper(buildPaper({ sections }), faces));
const textsOf = (sections: readonly PaperSection[]) =>
  lay(sections).pages.map((page) =>
    page.items.filter((item): item is PlacedText => item.kind === 'text' && item.element !== 'frame'),
  );
const typesIn = ({ type, children }: Part): string[] => [type, ...children.flatMap(typesIn)];

describe('chapters of a paper', () => {
  it('stand in order: heading, source, paragraphs, cautions, entries, tables', () => {
    const section: PaperSection = {
      heading: 'Composition',
      level: 1,
      source: 'Annex I',
      paragraphs: ['In percent by mass.'],
      cautions: ['A name is missing.'],
      entries: [['Supplier', 'Northmere']],
      tables: [{ columns, rows: numberedRows(1) }],
    };
    const [page] = textsOf([section]);
    const elements = [...new Set(page?.map(({ element }) => element.replace(/.*sections\[0\]\./, '')))];
    expect(elements.filter((one) => !/^(title|facts)/.test(one))).toEqual([
      'heading',
      'source',
      'paragraphs[0]',
      'cautions[0]',
      'entries[0][0]',
      'entries[0][1]',
      'tables[0].columns[0]',
      'tables[0].columns[1]',
      'tables[0].columns[2]',
      'tables[0].rows[0][0]',
      'tables[0].rows[0][1]',
      'tables[0].rows[0][2]',
    ]);
  });

  it('are a chapter and its parts to whoever has it read aloud', () => {
    const types = typesIn(
      lay([
        { heading: 'One', level: 1, paragraphs: ['Text.'] },
        { heading: 'One a', level: 2, paragraphs: ['Text.'] },
      ]).structure,
    );
    expect(types.filter((type) => type.startsWith('H'))).toEqual(['H1', 'H2', 'H3']);
  });

  it('never leave a heading at the foot of a page, and nothing below the body', () => {
    const sections = Array.from(
      { length: 60 },
      (_, index): PaperSection => ({
        heading: `Chapter ${index}`,
        level: index % 3 === 0 ? 1 : 2,
        source: 'Source',
        paragraphs: Array.from({ length: index % 4 }, (_unused, line) => `Line ${line} of ${index}.`),
        entries: index % 2 === 0 ? [['Label', `Entry of ${index}`]] : [],
        tables: index % 4 === 0 ? [{ columns, rows: numberedRows(3) }] : [],
      }),
    ).filter(
      ({ paragraphs = [], entries = [], tables = [] }) =>
        paragraphs.length + entries.length + tables.length > 0,
    );
    const pages = textsOf(sections);
    expect(pages.length).toBeGreaterThan(4);
    for (const page of pages) {
      const last = page.at(-1)?.element ?? '';
      expect(last).not.toMatch(/\.(heading|source)$|entries\[\d+\]\[0\]$|columns\[\d\]$/);
      expect(Math.max(...page.map(({ ink }) => ink.bottom))).toBeLessThanOrEqual(BODY_BOTTOM_MM);
    }
    const heard = pages.flat().filter(({ element }) => element.endsWith('.heading'));
    expect(new Set(heard.map(({ element }) => element)).size).toBe(sections.length);
  });

  it('refuse a letter that the font lacks, with its place', () => {
    const paper = buildPaper({ sections: [{ heading: 'One', level: 1, entries: [['Name', 'زبدة']] }] });
    const laid = layoutPaper(paper, faces);
    expect(laid.ok ? [] : laid.problems.map(({ where }) => where)).toContain('sections[0].entries[0][1]');
  });

  it('draw bars to one scale: what there was filled, what was lost as an empty end, each said in words', () => {
    const bars = [
      { name: 'Whipped', says: 'Whipped: 90 g, 10 g lost', foundShare: 0.9, lostShare: 0.1 },
      { name: 'In tins', says: 'In tins: 80 g, none lost', foundShare: 0.8, lostShare: 0 },
    ];
    const laidOut = lay([{ heading: 'What each stage left behind', level: 1, bars }]);
    const paths = laidOut.pages.flatMap(({ items }) => items).filter((item) => item.kind === 'path');
    const drawn = paths.filter(({ element }) => element.includes('bars['));
    expect(drawn.map(({ element, strokeMm }) => [element, strokeMm !== null])).toEqual([
      ['sections[0].bars[0]', false],
      ['sections[0].bars[0]', true],
      ['sections[0].bars[1]', false],
    ]);
    const [found, lost] = drawn;
    // 174 mm or whatever the text is wide: nine tenths of it, and the rest begins where they end.
    expect((lost?.xMm ?? 0) - (found?.xMm ?? 0)).toBeCloseTo(0.9 * TEXT_WIDTH_MM, 6);
    const altsIn = ({ alt, children }: Part): string[] => [
      ...(alt ? [alt] : []),
      ...children.flatMap(altsIn),
    ];
    expect(altsIn(laidOut.structure)).toEqual(expect.arrayContaining(bars.map(({ says }) => says)));
  });
});
