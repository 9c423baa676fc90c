import type { Faces } from './face.ts';
import { joinPieces } from './join-pieces.ts';
import { TEXT_WIDTH_MM } from './page-frame.ts';
import type { Paper } from './paper.ts';
import { paperStyles } from './paper-styles.ts';
import type { Piece, Pieces } from './piece.ts';
import { moveBy, type Part, type Placed } from './placed.ts';
import { paragraphAt, type SetParagraph, setParagraph } from './set-paragraph.ts';
import { placeTriangle, TRIANGLE_EM } from './triangle.ts';

type Style = (typeof paperStyles)[keyof typeof paperStyles];

export function paragraphOf(
  text: string,
  style: Style,
  widthMm: number,
  element: string,
  part: Part,
  faces: Faces,
) {
  return setParagraph(
    [{ text, weight: style.weight }],
    { ...style, align: 'left', widthMm, element, part },
    faces,
  );
}

/** Title, subtitle and the boxed banner. */
export function titlePieces(paper: Paper, faces: Faces): Pieces {
  const title = plainPieces(paper.title, paperStyles.title, 'title', 'H1', 0, faces);
  const subtitle = plainPieces(paper.subtitle, paperStyles.subtitle, 'subtitle', 'P', 0.8, faces);
  const banner = bannerPieces(paper.banner, faces);
  return joinPieces([title, subtitle, banner]);
}

/** A paragraph may run over a page's end: each of its lines is a piece. */
export function plainPieces(
  text: string | undefined,
  style: Style,
  where: string,
  type: Part['type'],
  gapMm: number,
  faces: Faces,
): Pieces {
  if (text === undefined || text === '') return { pieces: [], parts: [] };
  const part: Part = { type, children: [] };
  const paragraph = paragraphOf(text, style, TEXT_WIDTH_MM, where, part, faces);
  return { pieces: linePieces(paragraph, gapMm, where), parts: [part] };
}

const linePieces = (paragraph: SetParagraph, gapMm: number, where: string): Piece[] =>
  paragraph.lines.map((line, index) => ({
    heightMm: paragraph.lineMm,
    gapMm: index === 0 ? gapMm : 0,
    items: line.map((item) => moveBy(item, 0, -index * paragraph.lineMm)),
    isKeptWithNext: index === 0 && paragraph.lines.length > 1,
    where,
  }));

const BANNER_PADDING_MM = 2.2;

function bannerPieces(text: string | undefined, faces: Faces): Pieces {
  if (text === undefined) return { pieces: [], parts: [] };
  const part: Part = { type: 'P', children: [] };
  const style = paperStyles.banner;
  const indentMm = BANNER_PADDING_MM * 1.5 + style.sizeMm * TRIANGLE_EM;
  const widthMm = TEXT_WIDTH_MM - indentMm - BANNER_PADDING_MM;
  const paragraph = paragraphOf(text, style, widthMm, 'banner', part, faces);
  const heightMm = paragraph.heightMm + 2 * BANNER_PADDING_MM;
  const box: Placed = {
    kind: 'path',
    d: `M0 0H${TEXT_WIDTH_MM}V${heightMm}H0Z`,
    xMm: 0,
    yMm: 0,
    strokeMm: 0.6,
    tone: 'ink',
    element: 'banner',
  };
  const baselineMm = (paragraph.lines[0]?.[0]?.baselineMm ?? 0) + BANNER_PADDING_MM;
  const sign = placeTriangle(BANNER_PADDING_MM * 1.5, baselineMm, style.sizeMm, 'banner');
  const items = [box, sign, ...paragraphAt(paragraph, indentMm, BANNER_PADDING_MM)];
  return { pieces: [{ heightMm, gapMm: 5, items, isKeptWithNext: false, where: 'banner' }], parts: [part] };
}

/** A triangle and a sentence each. */
export function cautionPieces(
  cautions: readonly string[],
  faces: Faces,
  { where: list, firstGapMm } = { where: 'cautions', firstGapMm: 6 },
): Pieces {
  const style = paperStyles.caution;
  const indentMm = style.sizeMm * TRIANGLE_EM + 1;
  return joinPieces(
    cautions.map((text, index) => {
      const part: Part = { type: 'P', children: [] };
      const where = `${list}[${index}]`;
      const paragraph = paragraphOf(text, style, TEXT_WIDTH_MM - indentMm, where, part, faces);
      const baselineMm = paragraph.lines[0]?.[0]?.baselineMm ?? 0;
      const sign = placeTriangle(0, baselineMm, style.sizeMm, where);
      const piece: Piece = {
        heightMm: paragraph.heightMm,
        gapMm: index === 0 ? firstGapMm : 1,
        items: [sign, ...paragraphAt(paragraph, indentMm, 0)],
        isKeptWithNext: false,
        where,
      };
      return { pieces: [piece], parts: [part] };
    }),
  );
}

export const notePieces = (notes: readonly string[], faces: Faces): Pieces =>
  joinPieces(
    notes.map((text, index) =>
      plainPieces(text, paperStyles.note, `notes[${index}]`, 'P', index === 0 ? 7 : 2, faces),
    ),
  );

const WRITTEN_LINE_MM = 9;

/** A label, and under it ruled lines to write on. */
export const writingPieces = (spaces: NonNullable<Paper['writingSpaces']>, faces: Faces): Pieces =>
  joinPieces(
    spaces.map(({ label, lines }, index) => {
      const where = `writingSpaces[${index}]`;
      const heading = plainPieces(label, paperStyles.note, where, 'P', 7, faces);
      const ruled = Array.from(
        { length: lines },
        (): Piece => ({
          heightMm: WRITTEN_LINE_MM,
          gapMm: 0,
          items: [writingLine(0, TEXT_WIDTH_MM, WRITTEN_LINE_MM, where)],
          isKeptWithNext: false,
          where,
        }),
      );
      const kept = heading.pieces.map((piece) => ({ ...piece, isKeptWithNext: true }));
      return { pieces: [...kept, ...ruled], parts: heading.parts };
    }),
  );

export const writingLine = (leftMm: number, widthMm: number, yMm: number, element: string): Placed => ({
  kind: 'rule',
  fromMm: [leftMm, yMm],
  toMm: [leftMm + widthMm, yMm],
  thicknessMm: 0.2,
  tone: 'soft',
  element,
});

export const keptWithNext = ({ pieces, parts }: Pieces): Pieces => ({
  pieces: pieces.map((piece) => ({ ...piece, isKeptWithNext: true })),
  parts,
});
