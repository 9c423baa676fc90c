import type { Problem } from '../../core/problem.ts';
import type { Faces, Weight } from './face.ts';
import { findMissingGlyphs } from './find-missing-glyphs.ts';
import type { Paper, PaperSection, PaperTable } from './paper.ts';
import { paperStyles } from './paper-styles.ts';

type Written = readonly [where: string, text: string | undefined, weight: Weight];

/** Every text of a paper against the font that will draw it. */
export const checkPaper = (paper: Paper, faces: Faces): Problem[] =>
  textsOf(paper).flatMap(([where, text, weight]) =>
    text === undefined ? [] : findMissingGlyphs(text, where, faces[weight]),
  );

function textsOf(paper: Paper): Written[] {
  const listed = (name: string, texts: readonly string[], weight: Weight): Written[] =>
    texts.map((text, index) => [`${name}[${index}]`, text, weight]);
  return [
    ['title', paper.title, paperStyles.title.weight],
    ['subtitle', paper.subtitle, paperStyles.subtitle.weight],
    ['banner', paper.banner, paperStyles.banner.weight],
    ...paper.facts.flatMap(([label, value], index): Written[] => [
      [`facts[${index}][0]`, label, paperStyles.factLabel.weight],
      [`facts[${index}][1]`, value, paperStyles.factValue.weight],
    ]),
    ...listed('cautions', paper.cautions ?? [], paperStyles.caution.weight),
    ...paper.tables.flatMap((table, index) => textsOfTable(table, `tables[${index}]`)),
    ...(paper.sections ?? []).flatMap((section, index) => textsOfSection(section, `sections[${index}]`)),
    ...listed('notes', paper.notes, paperStyles.note.weight),
    ...listed(
      'writingSpaces',
      (paper.writingSpaces ?? []).map(({ label }) => label),
      paperStyles.note.weight,
    ),
    ...listed('signatures', paper.signatures ?? [], paperStyles.signature.weight),
    ['footer', paper.footer, paperStyles.footer.weight],
  ];
}

function textsOfTable(table: PaperTable, where: string): Written[] {
  const columns = table.columns.map(
    ({ title }, index): Written => [`${where}.columns[${index}]`, title, paperStyles.columnTitle.weight],
  );
  const rows = table.rows.flatMap((row, r) =>
    row.flatMap((cell, c): Written[] => {
      const place = `${where}.rows[${r}][${c}]`;
      if (typeof cell === 'string') return [[place, cell, 'regular']];
      return [
        [place, cell.text, 'regular'],
        [`${place}.remark`, cell.remark, paperStyles.remark.weight],
      ];
    }),
  );
  const totals = (table.totals ?? []).map((text, c): Written => [`${where}.totals[${c}]`, text, 'bold']);
  return [[`${where}.heading`, table.heading, paperStyles.heading.weight], ...columns, ...rows, ...totals];
}

const textsOfSection = (section: PaperSection, where: string): Written[] => [
  [`${where}.heading`, section.heading, paperStyles.chapter.weight],
  [`${where}.source`, section.source, paperStyles.source.weight],
  ...(section.paragraphs ?? []).map(
    (text, index): Written => [`${where}.paragraphs[${index}]`, text, paperStyles.note.weight],
  ),
  ...(section.cautions ?? []).map(
    (text, index): Written => [`${where}.cautions[${index}]`, text, paperStyles.caution.weight],
  ),
  ...(section.entries ?? []).flatMap(([label, text], index): Written[] => [
    [`${where}.entries[${index}][0]`, label, paperStyles.factLabel.weight],
    [`${where}.entries[${index}][1]`, text, paperStyles.note.weight],
  ]),
  ...(section.tables ?? []).flatMap((table, index) => textsOfTable(table, `${where}.tables[${index}]`)),
];
