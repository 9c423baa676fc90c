import { done, type Result } from '../../core/problem.ts';
import { printWords } from '../../words/index.ts';
import { factPieces, signaturePieces } from './across-pieces.ts';
import { checkPaper } from './check-paper.ts';
import type { Faces } from './face.ts';
import { joinPieces } from './join-pieces.ts';
import { FOOTER_MM, LEFT_MM, PAGE_HEIGHT_MM, PAGE_WIDTH_MM, TEXT_WIDTH_MM } from './page-frame.ts';
import { paginate } from './paginate.ts';
import type { Paper } from './paper.ts';
import { paperStyles } from './paper-styles.ts';
import type { Placed, PrintDocument } from './placed.ts';
import { sectionPieces } from './section-pieces.ts';
import { type ColumnAlign, paragraphAt, setParagraph } from './set-paragraph.ts';
import { tablePieces } from './table-pieces.ts';
import { cautionPieces, notePieces, titlePieces, writingPieces } from './text-pieces.ts';

/** Sets a paper on as many A4 pages as it takes, each with its footer and its number. */
export function layoutPaper(paper: Paper, faces: Faces): Result<PrintDocument> {
  const problems = checkPaper(paper, faces);
  if (problems.length > 0) return { ok: false, problems };
  const { pieces, parts } = joinPieces([
    titlePieces(paper, faces),
    factPieces(paper.facts, faces),
    cautionPieces(paper.cautions ?? [], faces),
    ...paper.tables.map((table, index) => tablePieces(table, `tables[${index}]`, faces)),
    ...(paper.sections ?? []).map((section, index) => sectionPieces(section, index, faces)),
    writingPieces(paper.writingSpaces ?? [], faces),
    notePieces(paper.notes, faces),
    signaturePieces(paper.signatures ?? [], faces),
  ]);
  const dealt = paginate(pieces);
  if (!dealt.ok) return dealt;
  const total = dealt.value.length;
  return done({
    title: paper.title,
    structure: { type: 'Document', children: parts },
    pages: dealt.value.map((items, index) => ({
      widthMm: PAGE_WIDTH_MM,
      heightMm: PAGE_HEIGHT_MM,
      items: [...items, ...runningItems(paper, index + 1, total, faces)],
    })),
  });
}

/** Footer, number, and from the second page on the title over it. A screen reader skips them. */
function runningItems(paper: Paper, number: number, total: number, faces: Faces): Placed[] {
  const style = paperStyles.footer;
  const write = (text: string, yMm: number, align: ColumnAlign, widthMm: number, leftMm: number): Placed[] =>
    paragraphAt(
      setParagraph([{ text, weight: style.weight }], { ...style, align, widthMm, element: 'frame' }, faces),
      leftMm,
      yMm,
    );
  const numberMm = 34;
  const rule: Placed = {
    kind: 'rule',
    fromMm: [LEFT_MM, FOOTER_MM - 2],
    toMm: [LEFT_MM + TEXT_WIDTH_MM, FOOTER_MM - 2],
    thicknessMm: 0.18,
    tone: 'line',
    element: 'frame',
  };
  const page = printWords.paper.page(number, total);
  return [
    rule,
    ...write(paper.footer, FOOTER_MM, 'left', TEXT_WIDTH_MM - numberMm, LEFT_MM),
    ...write(page, FOOTER_MM, 'right', numberMm, LEFT_MM + TEXT_WIDTH_MM - numberMm),
    ...(number === 1
      ? []
      : write(printWords.paper.continued(paper.title), 13, 'left', TEXT_WIDTH_MM, LEFT_MM)),
  ];
}
