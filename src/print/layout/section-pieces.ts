import { barPieces } from './bar-pieces.ts';
import type { Faces } from './face.ts';
import { joinPieces } from './join-pieces.ts';
import type { PaperSection } from './paper.ts';
import { paperStyles } from './paper-styles.ts';
import { picturePieces } from './picture-pieces.ts';
import type { Pieces } from './piece.ts';
import { type TableTitle, tablePieces } from './table-pieces.ts';
import { cautionPieces, keptWithNext, plainPieces } from './text-pieces.ts';

const HEADINGS = {
  1: { style: paperStyles.chapter, type: 'H2', gapMm: 10 },
  2: { style: paperStyles.part, type: 'H3', gapMm: 6.5 },
} as const;

const WITHIN: TableTitle = { style: paperStyles.tableTitle, type: 'P', gapMm: 5 };

/** A chapter or a part of one: its heading stays with what comes first under it. */
export function sectionPieces(section: PaperSection, index: number, faces: Faces): Pieces {
  const where = `sections[${index}]`;
  const { style, type, gapMm } = HEADINGS[section.level];
  const heading = plainPieces(section.heading, style, `${where}.heading`, type, gapMm, faces);
  const source = plainPieces(section.source, paperStyles.source, `${where}.source`, 'P', 0.4, faces);
  return joinPieces([
    keptWithNext(heading),
    keptWithNext(source),
    ...(section.paragraphs ?? []).map((text, place) =>
      plainPieces(text, paperStyles.note, `${where}.paragraphs[${place}]`, 'P', 2, faces),
    ),
    cautionPieces(section.cautions ?? [], faces, { where: `${where}.cautions`, firstGapMm: 2.4 }),
    ...(section.entries ?? []).map((entry, place) => entryPieces(entry, `${where}.entries[${place}]`, faces)),
    ...(section.bars ?? []).map((bar, place) => barPieces(bar, `${where}.bars[${place}]`, faces)),
    ...(section.tables ?? []).map((table, place) =>
      tablePieces(table, `${where}.tables[${place}]`, faces, WITHIN),
    ),
    ...(section.pictures ?? []).map((picture, place) =>
      picturePieces(picture, `${where}.pictures[${place}]`, faces),
    ),
  ]);
}

/** A small heading of its own over a text, which may be long. */
function entryPieces([label, text]: readonly [string, string], where: string, faces: Faces): Pieces {
  const name = plainPieces(label, paperStyles.factLabel, `${where}[0]`, 'P', 2.6, faces);
  return joinPieces([
    keptWithNext(name),
    plainPieces(text, paperStyles.note, `${where}[1]`, 'P', 0.2, faces),
  ]);
}
