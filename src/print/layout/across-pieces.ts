import type { Faces } from './face.ts';
import { TEXT_WIDTH_MM } from './page-frame.ts';
import type { Paper } from './paper.ts';
import { paperStyles } from './paper-styles.ts';
import type { Piece, Pieces } from './piece.ts';
import type { Part, Placed } from './placed.ts';
import { paragraphAt } from './set-paragraph.ts';
import { paragraphOf, writingLine } from './text-pieces.ts';

const ACROSS = 3;
const GAP_MM = 6;
const WIDTH_MM = (TEXT_WIDTH_MM - GAP_MM * (ACROSS - 1)) / ACROSS;
const leftOf = (index: number): number => (index % ACROSS) * (WIDTH_MM + GAP_MM);

interface Cell {
  readonly part: Part;
  readonly items: readonly Placed[];
  readonly heightMm: number;
}

/** Label over value, three across. */
export const factPieces = (facts: Paper['facts'], faces: Faces): Pieces =>
  rowsOf(
    facts.map((fact, index) => factCell(fact, index, faces)),
    { name: 'facts', firstGapMm: 6, gapMm: 3, isKeptTogether: false },
  );

function factCell([label, value]: Paper['facts'][number], index: number, faces: Faces): Cell {
  const part: Part = { type: 'P', children: [] };
  const where = `facts[${index}]`;
  const name = paragraphOf(label, paperStyles.factLabel, WIDTH_MM, `${where}[0]`, part, faces);
  const answer = paragraphOf(value, paperStyles.factValue, WIDTH_MM, `${where}[1]`, part, faces);
  const items = [
    ...paragraphAt(name, leftOf(index), 0).map((item) => ({ ...item, hasSpaceAfter: true })),
    ...paragraphAt(answer, leftOf(index), name.heightMm),
  ];
  return { part, items, heightMm: name.heightMm + answer.heightMm };
}

/** White to sign in, above the line. */
const SIGNATURE_ROOM_MM = 13;

/** Lines to sign on, three across, each with what it is for under it. */
export const signaturePieces = (signatures: readonly string[], faces: Faces): Pieces =>
  rowsOf(
    signatures.map((text, index) => signatureCell(text, index, faces)),
    { name: 'signatures', firstGapMm: 4, gapMm: 4, isKeptTogether: true },
  );

function signatureCell(text: string, index: number, faces: Faces): Cell {
  const part: Part = { type: 'P', children: [] };
  const where = `signatures[${index}]`;
  const paragraph = paragraphOf(text, paperStyles.signature, WIDTH_MM, where, part, faces);
  const line = writingLine(leftOf(index), WIDTH_MM, SIGNATURE_ROOM_MM, where);
  const underMm = SIGNATURE_ROOM_MM + 0.8;
  return {
    part,
    items: [line, ...paragraphAt(paragraph, leftOf(index), underMm)],
    heightMm: underMm + paragraph.heightMm,
  };
}

interface RowRule {
  readonly name: string;
  readonly firstGapMm: number;
  readonly gapMm: number;
  readonly isKeptTogether: boolean;
}

function rowsOf(cells: readonly Cell[], rule: RowRule): Pieces {
  const pieces: Piece[] = [];
  for (let start = 0; start < cells.length; start += ACROSS) {
    const row = cells.slice(start, start + ACROSS);
    pieces.push({
      heightMm: Math.max(...row.map(({ heightMm }) => heightMm)),
      gapMm: start === 0 ? rule.firstGapMm : rule.gapMm,
      items: row.flatMap(({ items }) => items),
      isKeptWithNext: rule.isKeptTogether && start + ACROSS < cells.length,
      where: `${rule.name}[${start}]`,
    });
  }
  return { pieces, parts: cells.map(({ part }) => part) };
}
