import { labelPrintRules } from '../../catalogue/index.ts';
import type { labels, Market } from '../../contract/index.ts';
import { type Problem, problem, type Result } from '../../core/problem.ts';
import {
  type Artwork,
  type CodeWish,
  composePieces,
  type DesignPiece,
  faceOfSurface,
  judgeFit,
  type LabelDesign,
  type LabelPiece,
  type LabelWording,
  type LayoutTools,
  type LetterLimits,
  layoutPiece,
  type MovableElement,
  type PieceLayout,
} from '../../print/layout/index.ts';
import { findAttachment, findLabelSheet, type Reader } from '../../storage/index.ts';
import { labelPrintWords } from '../../words/index.ts';
import { painter } from '../painter.ts';

export interface LaidPiece {
  readonly piece: LabelPiece;
  readonly layout: Result<PieceLayout>;
}

export interface LaidLabel {
  readonly pieces: readonly LaidPiece[];
  /** What is wrong with the design as a whole. */
  readonly problems: readonly Problem[];
  /** Labels that do not fit on the sheet that they are to be printed on. */
  readonly sheetProblems: readonly Problem[];
}

/** What a design takes from product and workshop. */
export interface DesignFacts {
  readonly market: Market;
  readonly gtin: string;
  readonly codeDomain: string;
}

/** Each piece of a design with its words at true size, as far as it can be drawn, and everything that is wrong. */
export async function layOutPieces(
  db: Reader,
  details: labels.LabelDesignDetails,
  facts: DesignFacts,
  wording: LabelWording,
): Promise<LaidLabel> {
  const noCode = details.pieces.flatMap((piece) => whyNoCode(piece, facts));
  const design = await buildDesign(db, details, facts);
  const composed = composePieces(design, wording);
  // A code that cannot be written hides nothing else: the rest is drawn without it.
  const drawn = composed.ok ? composed : composePieces(withoutCodes(design), wording);
  const tools = await layoutTools();
  const pieces = drawn.ok ? drawn.value.map((piece) => ({ piece, layout: layoutPiece(piece, tools) })) : [];
  return {
    pieces,
    problems: [...noCode, ...(composed.ok ? [] : composed.problems)],
    sheetProblems: await judgeSheets(db, details),
  };
}

/** A label that is larger than those of its sheet keeps it from being printed there, and nowhere else. */
async function judgeSheets(db: Reader, { pieces }: labels.LabelDesignDetails): Promise<Problem[]> {
  const problems: Problem[] = [];
  for (const { id, role, surface, sheetId } of pieces) {
    const row = sheetId === null ? undefined : await findLabelSheet(db, sheetId);
    if (!row) continue;
    const { geometry } = JSON.parse(row.details) as labels.LabelSheetDetails;
    const misfit = judgeFit({ id, size: faceOfSurface(surface) }, geometry);
    const parameters = { piece: labelPrintWords.roles[role], sheet: row.name };
    if (misfit)
      problems.push({ ...misfit, code: 'label-larger-than-sheet', where: `${id}.sheetId`, parameters });
  }
  return problems;
}

export async function layoutTools(): Promise<LayoutTools> {
  const { loadFaces, loadCodes } = await painter();
  return { faces: loadFaces(), codes: loadCodes(), rules: labelPrintRules };
}

async function buildDesign(
  db: Reader,
  details: labels.LabelDesignDetails,
  facts: DesignFacts,
): Promise<LabelDesign> {
  const pieces: DesignPiece[] = [];
  for (const { id, role, surface, artwork, code, elements, letters } of details.pieces) {
    const picture = artwork && (await findArtwork(db, artwork));
    const wish = codeWish(code, facts);
    pieces.push({
      id,
      role,
      surface,
      ...(elements && { elements }),
      letters: lettersOf(letters),
      ...(picture && { artwork: picture }),
      ...(wish && { code: wish }),
    });
  }
  const { moves, pointer, surface } = details.leaflet;
  // In the United States nothing may move there: all of it has to stand on the labels.
  const hasLeaflet = moves !== 'none' && facts.market !== 'US';
  return {
    market: facts.market,
    languages: details.languages,
    pieces,
    ...(hasLeaflet && { leaflet: { surface, pointer, elements: MOVES[moves] } }),
  };
}

const lettersOf = ({ leastMm, mostMm }: labels.DesignPiece['letters']): LetterLimits => ({
  ...(leastMm !== null && { leastXHeightMm: leastMm }),
  ...(mostMm !== null && { mostXHeightMm: mostMm }),
});

const MOVES: Readonly<Record<labels.LabelDesignDetails['leaflet']['moves'], readonly MovableElement[]>> = {
  none: [],
  precautions: ['precautions'],
  ingredients: ['ingredients'],
  both: ['precautions', 'ingredients'],
};

async function findArtwork(
  db: Reader,
  { attachmentId, use, bleedMm }: NonNullable<labels.DesignPiece['artwork']>,
): Promise<Artwork | undefined> {
  const file = await findAttachment(db, attachmentId);
  return file && { bytes: new Uint8Array(file.bytes), use, bleedMm };
}

/** undefined also where something that it needs was never entered (see whyNoCode). */
function codeWish(
  kind: labels.DesignPiece['code'],
  { gtin, codeDomain: domain }: DesignFacts,
): CodeWish | undefined {
  if (kind === 'in-house') return { kind };
  if (kind === 'ean-13' && gtin !== '') return { kind, gtin };
  if (kind === 'digital-link' && gtin !== '' && domain !== '') return { kind, domain, gtin };
  return undefined;
}

function whyNoCode({ id, code }: labels.DesignPiece, { gtin, codeDomain }: DesignFacts): Problem[] {
  const needsNumber = code === 'ean-13' || code === 'digital-link';
  return [
    ...(needsNumber && gtin === '' ? [problem('label-gtin-missing', `${id}.code`)] : []),
    ...(code === 'digital-link' && codeDomain === '' ? [problem('label-domain-missing', `${id}.code`)] : []),
  ];
}

const withoutCodes = (design: LabelDesign): LabelDesign => ({
  ...design,
  pieces: design.pieces.map(({ code: _, ...piece }) => piece),
});
