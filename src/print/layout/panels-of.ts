import { faceOfSurface } from './face-of-surface.ts';
import type { LabelPiece, PieceText } from './label-design.ts';
import { INSET_MM, STICKER_INSET_MM } from './label-rules.ts';
import type { FaceSize } from './outline.ts';
import type { Panel } from './panel.ts';
import { buildBlocks, STEPS } from './panel-blocks.ts';
import type { LayoutTools } from './piece-layout.ts';
import type { Fixture } from './symbol-row.ts';

export interface PanelPlace {
  readonly panel: Panel;
  /** From the left of the piece. */
  readonly xMm: number;
}

/** Of a strip round a jar, what one sees without turning it: 40 % (21 CFR 701.13, cylinder; common practice elsewhere). */
const FRONT_SHARE = 0.4;
const FRONT_TEXTS: ReadonlySet<PieceText['element']> = new Set(['brand', 'name', 'function', 'content']);

/** One panel; a strip with everything on it has its front on the left and the rest to its right. The overlap stays blank. */
export function panelsOf(
  piece: LabelPiece,
  fixtures: readonly Fixture[],
  tools: LayoutTools,
): readonly PanelPlace[] {
  const { surface, texts } = piece;
  if (surface.shape !== 'wrap') {
    return [{ xMm: 0, panel: panelOf(piece, texts, faceOfSurface(surface), fixtures, tools) }];
  }
  const strip = (widthMm: number): FaceSize => ({ shape: 'rectangle', widthMm, heightMm: surface.heightMm });
  const { circumferenceMm } = surface;
  if (piece.role !== 'whole') {
    return [{ xMm: 0, panel: panelOf(piece, texts, strip(circumferenceMm), fixtures, tools) }];
  }
  const frontMm = circumferenceMm * FRONT_SHARE;
  const front = texts.filter(({ element }) => FRONT_TEXTS.has(element));
  const rest = texts.filter(({ element }) => !FRONT_TEXTS.has(element));
  return [
    { xMm: 0, panel: panelOf(piece, front, strip(frontMm), [], tools, true) },
    { xMm: frontMm, panel: panelOf(piece, rest, strip(circumferenceMm - frontMm), fixtures, tools) },
  ];
}

function panelOf(
  piece: LabelPiece,
  texts: readonly PieceText[],
  size: FaceSize,
  row: readonly Fixture[],
  tools: LayoutTools,
  isFront = piece.role === 'front',
): Panel {
  const isRound = size.shape === 'round';
  return {
    ...buildBlocks(texts, piece, size, tools),
    size,
    insetMm: piece.role === 'sticker' ? STICKER_INSET_MM : INSET_MM,
    align: isRound || (isFront && piece.surface.shape === 'wrap') ? 'centre' : 'left',
    isCentredInHeight: isRound || isFront || piece.role === 'sticker',
    stepCount: STEPS,
    row,
  };
}
