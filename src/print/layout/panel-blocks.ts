import { type Block, contentOf, type RuleBlock, type SignedBlock, type TextBlock } from './block.ts';
import { type ContentSize, sizeContent } from './content-size.ts';
import { emForXHeightMm, type Faces, type Weight } from './face.ts';
import { HOURGLASS_LEAD_EM, placeHourglass } from './hourglass.ts';
import type { LabelPiece, PieceText } from './label-design.ts';
import { INSET_MM, SMALLEST_NAME_X_HEIGHT_MM } from './label-rules.ts';
import { findIngredientLetterHeightMm } from './net-type-height.ts';
import { type FaceSize, heightOf, widthOf } from './outline.ts';
import { prepareText } from './prepare-text.ts';
import type { PrintRules } from './print-rules.ts';
import { weightOf } from './weight-of.ts';

/** Steps from the largest letters down to the smallest. */
export const STEPS = 11;

export interface BlockTools {
  readonly faces: Faces;
  readonly rules: PrintRules;
}

export interface PanelBlocks {
  blocksAt(step: number): readonly Block[];
  footAt?(step: number): Block;
}

/**
 * The texts of a panel as blocks that grow and shrink together: brand, name, function and content as on the front of a tin
 * where the piece is a front, all others as paragraphs under one another. In the United States the content is the foot.
 */
export function buildBlocks(
  texts: readonly PieceText[],
  piece: LabelPiece,
  size: FaceSize,
  tools: BlockTools,
): PanelBlocks {
  const isShown = piece.role === 'front' || piece.role === 'whole';
  const shown = isShown ? texts.filter(({ element }) => SHOWN.has(element)) : [];
  const listed = texts.filter((text) => !shown.includes(text));
  const content = shown.find(({ element }) => element === 'content');
  const isFoot = piece.market === 'US' && content !== undefined;
  const above = isFoot ? shown.filter((text) => text !== content) : shown;
  const list = listed.map((text) => prepared(text, piece, tools));
  const front = above.map((text) => prepared(text, piece, tools));
  const foot = isFoot ? prepared(content, piece, tools) : undefined;
  const wishedMm = wishedNameMm(texts, piece, size, tools.faces);
  const sizes = (step: number): Sizes => sizesAt(step, wishedMm, piece, tools.faces);
  return {
    blocksAt: (step) => [
      ...frontBlocks(front, size, sizes(step)),
      ...list.map((text) => listBlock(text, sizes(step))),
    ],
    ...(foot && { footAt: (step: number) => shownBlock(foot, sizes(step)) }),
  };
}

const SHOWN: ReadonlySet<PieceText['element']> = new Set(['brand', 'name', 'function', 'content']);

interface Prepared {
  readonly text: PieceText;
  readonly element: string;
  readonly content: TextBlock['content'];
  /** The law's least em for the declared content. */
  readonly contentSize: ContentSize | null;
  /** The law's least em for paragraphs: the ingredients in the United States. */
  readonly leastMm: number;
}

/** Text is taken apart once; the size is all that changes from step to step. */
function prepared(text: PieceText, piece: LabelPiece, { faces, rules }: BlockTools): Prepared {
  const weight = piece.market === 'US' && text.element === 'precautions' ? 'bold' : weightOf(text.element);
  const heading = text.heading === '' ? [] : [{ text: `${text.heading} `, weight: 'bold' as const }];
  const letterMm = piece.market === 'US' ? leastLetterMm(text, piece, rules) : 0;
  return {
    text,
    element: `${piece.id}.${text.element}`,
    content: contentOf([...heading, { text: text.text, weight }], faces),
    contentSize: text.element === 'content' ? sizeContent(text.text, piece, rules, faces) : null,
    leastMm: emForXHeightMm(letterMm, faces.regular),
  };
}

/**
 * In the United States: ingredients (21 CFR 701.3(b)), smaller on small containers; warnings bold and never below a sixteenth of
 * an inch, however small the container (21 CFR 740.2(b), from memory).
 */
function leastLetterMm(
  { element }: PieceText,
  { containerSurfaceMm2 }: LabelPiece,
  rules: PrintRules,
): number {
  if (element === 'ingredients') return findIngredientLetterHeightMm(containerSurfaceMm2, rules);
  return element === 'precautions' ? findIngredientLetterHeightMm(undefined, rules) : 0;
}

interface Sizes {
  readonly name: number;
  readonly brand: number;
  readonly function: number;
  readonly content: number;
  readonly list: number;
}

/** Shares of the name that look right from arm's length: common practice, no source. */
function sizesAt(step: number, wishedMm: number, piece: LabelPiece, faces: Faces): Sizes {
  const share = 1 - step / (STEPS - 1);
  const between = (least: number, most: number): number => least + Math.max(0, most - least) * share;
  const floor = emForXHeightMm(piece.leastXHeightMm, faces.regular);
  const nameFloor = emForXHeightMm(Math.max(SMALLEST_NAME_X_HEIGHT_MM, piece.leastXHeightMm), faces.bold);
  const list = between(floor, emForXHeightMm(piece.mostXHeightMm, faces.regular));
  // Beside paragraphs, nothing of the front looks smaller than they do.
  const least = piece.role === 'whole' ? list : floor;
  return {
    name: between(nameFloor, wishedMm),
    brand: Math.max(least, between(floor, wishedMm * 0.44)),
    function: Math.max(least, between(floor, wishedMm * 0.5)),
    content: between(0, wishedMm * 0.66),
    list,
  };
}

/** A long name is set a little smaller from the start, so that two lines take it rather than three. */
function wishedNameMm(texts: readonly PieceText[], piece: LabelPiece, size: FaceSize, faces: Faces): number {
  const name = texts.find(({ element }) => element === 'name')?.text ?? '';
  const share = piece.role === 'whole' && piece.surface.shape !== 'wrap' ? 0.6 : 1;
  const boldest =
    size.shape === 'round' ? size.diameterMm * 0.12 : Math.min(widthOf(size) * 0.1, heightOf(size) * 0.18);
  const lineMm = (widthOf(size) - 2 * INSET_MM) * 0.85;
  const longerLineEm = faces.bold.advanceOf(prepareText(name)) * 0.58;
  return share * Math.min(boldest, Math.max(boldest * 0.65, lineMm / Math.max(longerLineEm, 0.01)));
}

/** The content stands under a short rule where something stands over it. */
function frontBlocks(front: readonly Prepared[], size: FaceSize, sizes: Sizes): Block[] {
  return front.flatMap((text, index): Block[] => {
    const block = shownBlock(text, sizes);
    return text.text.element === 'content' && index > 0
      ? [ruleAbove(text.element, size, sizes), block]
      : [block];
  });
}

const ruleAbove = (element: string, size: FaceSize, sizes: Sizes): RuleBlock => ({
  kind: 'rule',
  element: element.replace(/[^.]*$/, 'rule'),
  lengthMm: size.shape === 'round' ? size.diameterMm * 0.2 : widthOf(size),
  thicknessMm: 0.25,
  gapMm: sizes.name * 0.46,
});

const GAP_OF_NAME = { brand: 0, name: 0.42, function: 0.3, content: 0.42 } as const;

function shownBlock({ text, element, content, contentSize }: Prepared, sizes: Sizes): TextBlock {
  const key = text.element as keyof typeof GAP_OF_NAME;
  return {
    kind: 'text',
    element,
    content,
    sizeMm: contentSize === null ? sizes[key] : Math.max(contentSize.leastMm, sizes.content),
    gapMm: sizes.name * GAP_OF_NAME[key],
    leadingEm: 1.14,
    isBalanced: true,
  };
}

function listBlock(prepared: Prepared, sizes: Sizes): TextBlock | SignedBlock {
  const { text, element, content, contentSize, leastMm } = prepared;
  const sizeMm = contentSize === null ? Math.max(sizes.list, leastMm) : contentSize.leastMm;
  const gapMm = sizes.list * 0.5;
  if (text.sign === 'hourglass') {
    const signElement = element.replace(/[^.]*$/, 'hourglass');
    return {
      kind: 'signed',
      element,
      content,
      sizeMm,
      gapMm,
      leadMm: HOURGLASS_LEAD_EM * sizeMm,
      draw: (xMm, baselineMm) => placeHourglass(xMm, baselineMm, sizeMm, signElement),
    };
  }
  return { kind: 'text', element, content, sizeMm, gapMm, leadingEm: 1.18, isBalanced: false };
}

/** Height of the lower-case letters in the smallest of the blocks; the content has figures and a rule of its own. */
export function smallestXHeightOf(blocks: readonly Block[], faces: Faces): number {
  const heights = blocks.flatMap((block) => {
    if (block.kind === 'rule' || block.element.endsWith('.content')) return [];
    const weights: readonly Weight[] = block.content.lines.flat().map(({ weight }) => weight);
    return weights.map((weight) => block.sizeMm * faces[weight].xHeight);
  });
  return heights.length === 0 ? 0 : Math.min(...heights);
}
