import type { Block, RuleBlock, SignedBlock, TextBlock } from './block.ts';
import type { Faces } from './face.ts';
import type { Reach, Region } from './outline.ts';
import { placeLine } from './place-line.ts';
import type { Placed, PlacedText } from './placed.ts';
import { countFitting, setLine } from './set-line.ts';
import type { Token } from './split-into-tokens.ts';

export type Align = 'left' | 'centre';

export interface Flowed {
  readonly ok: true;
  readonly items: readonly Placed[];
  readonly endMm: number;
}

export interface FlowFailure {
  readonly ok: false;
  readonly element: string;
  /** Set where one word is wider than the region anywhere. */
  readonly wordMm?: number;
  /** What there would be for it, then. */
  readonly roomMm?: number;
}

/** Sets blocks one under the other from a height downwards; stops at the first that finds no room. */
export function flowBlocks(
  blocks: readonly Block[],
  region: Region,
  startMm: number,
  align: Align,
  faces: Faces,
): Flowed | FlowFailure {
  const items: Placed[] = [];
  let endMm = startMm;
  for (const [index, block] of blocks.entries()) {
    const fromMm = endMm + (index === 0 ? 0 : block.gapMm);
    const flowed = flowBlock(block, region, fromMm, align, faces);
    if (!flowed.ok) return flowed;
    items.push(...flowed.items);
    endMm = flowed.endMm;
  }
  return { ok: true, items, endMm };
}

function flowBlock(block: Block, region: Region, fromMm: number, align: Align, faces: Faces) {
  if (block.kind === 'rule') return flowRule(block, region, fromMm, align);
  if (block.kind === 'signed') return flowSigned(block, region, fromMm, align, faces);
  return flowText(block, region, fromMm, align, faces);
}

/** Slides down until the strip takes sign and text side by side. */
function flowSigned(
  block: SignedBlock,
  region: Region,
  fromMm: number,
  align: Align,
  faces: Faces,
): Flowed | FlowFailure {
  const { element, content, sizeMm, leadMm } = block;
  const line = setLine(content.lines.flat(), sizeMm, faces);
  const widthMm = leadMm + line.widthMm;
  if (widthMm > region.widestMm) return { ok: false, element, wordMm: widthMm, roomMm: region.widestMm };
  for (let baselineMm = fromMm + content.aboveEm * sizeMm; ; baselineMm += SLIDE_MM) {
    const endMm = baselineMm + content.belowEm * sizeMm;
    if (endMm > region.bottomMm + SLIDE_MM) return { ok: false, element };
    const reach = region.reachOf(baselineMm - content.aboveEm * sizeMm, endMm);
    if (reach === null || reach.right - reach.left < widthMm) continue;
    const left = leftOf(widthMm, reach, align);
    const place = { xMm: left + leadMm, baselineMm, sizeMm, tone: 'ink', element } as const;
    return { ok: true, items: [...block.draw(left, baselineMm), ...placeLine(line, place, faces)], endMm };
  }
}

function flowRule(block: RuleBlock, region: Region, fromMm: number, align: Align): Flowed | FlowFailure {
  const { element, lengthMm, thicknessMm } = block;
  const reach = region.reachOf(fromMm, fromMm + thicknessMm);
  if (reach === null) return { ok: false, element };
  const length = Math.min(lengthMm, reach.right - reach.left);
  const left = leftOf(length, reach, align);
  const y = fromMm + thicknessMm / 2;
  const item: Placed = {
    kind: 'rule',
    element,
    tone: 'ink',
    thicknessMm,
    fromMm: [left, y],
    toMm: [left + length, y],
  };
  return { ok: true, items: [item], endMm: fromMm + thicknessMm };
}

const leftOf = (length: number, reach: Reach, align: Align): number =>
  align === 'left' ? reach.left : (reach.left + reach.right - length) / 2;

/** Narrows the column as far as the number of lines stays: a fair break by halving, to about a hundredth of the width. */
function flowText(block: TextBlock, region: Region, fromMm: number, align: Align, faces: Faces) {
  const greedy = fillLines(block, region, fromMm, align, Number.POSITIVE_INFINITY, faces);
  if (!greedy.ok || !block.isBalanced || greedy.lineCount < 2) return greedy;
  let best = greedy;
  let tooNarrow = 0;
  let wideEnough = greedy.widestMm;
  for (let halving = 0; halving < 7; halving += 1) {
    const middle = (tooNarrow + wideEnough) / 2;
    const tried = fillLines(block, region, fromMm, align, middle, faces);
    const isAsShort = tried.ok && tried.lineCount === greedy.lineCount && tried.endMm <= greedy.endMm;
    if (isAsShort) {
      best = tried;
      wideEnough = middle;
    } else tooNarrow = middle;
  }
  return best;
}

interface Filled extends Flowed {
  readonly items: readonly PlacedText[];
  readonly lineCount: number;
  readonly widestMm: number;
}

/** Takes as many words a line as go in, from `fromMm` downwards. */
function fillLines(
  block: TextBlock,
  region: Region,
  fromMm: number,
  align: Align,
  capMm: number,
  faces: Faces,
): Filled | FlowFailure {
  const { element, sizeMm, content } = block;
  const items: PlacedText[] = [];
  let baselineMm = fromMm + content.aboveEm * sizeMm;
  let lineCount = 0;
  let widestMm = 0;
  let lastBaselineMm = baselineMm;
  for (const tokens of content.lines) {
    let start = 0;
    while (start < tokens.length) {
      const room = findRoom(block, tokens, start, region, baselineMm, capMm, faces);
      if (!room.ok) return room;
      const line = setLine(tokens.slice(start, start + room.count), sizeMm, faces);
      const xMm = leftOf(line.widthMm, room.reach, align);
      items.push(
        ...placeLine(line, { xMm, baselineMm: room.baselineMm, sizeMm, tone: 'ink', element }, faces),
      );
      start += room.count;
      lineCount += 1;
      widestMm = Math.max(widestMm, line.widthMm);
      lastBaselineMm = room.baselineMm;
      baselineMm = lastBaselineMm + block.leadingEm * sizeMm;
    }
  }
  return { ok: true, items, lineCount, widestMm, endMm: lastBaselineMm + content.belowEm * sizeMm };
}

interface Room {
  readonly ok: true;
  readonly count: number;
  readonly baselineMm: number;
  readonly reach: Reach;
}

/** In a circle the strip may be too short up here and long enough a little lower. */
const SLIDE_MM = 0.25;

function findRoom(
  block: TextBlock,
  tokens: readonly Token[],
  start: number,
  region: Region,
  fromBaselineMm: number,
  capMm: number,
  faces: Faces,
): Room | FlowFailure {
  const { element, sizeMm, content } = block;
  const wordMm = setLine(tokens.slice(start, start + 1), sizeMm, faces).widthMm;
  if (wordMm > region.widestMm) return { ok: false, element, wordMm, roomMm: region.widestMm };
  if (wordMm > capMm) return { ok: false, element };
  for (let baselineMm = fromBaselineMm; ; baselineMm += SLIDE_MM) {
    const reach = region.reachOf(
      baselineMm - content.aboveEm * sizeMm,
      baselineMm + content.belowEm * sizeMm,
    );
    if (reach === null && baselineMm + content.belowEm * sizeMm > region.bottomMm)
      return { ok: false, element };
    if (reach === null) continue;
    const widthMm = Math.min(capMm, reach.right - reach.left);
    const count = countFitting(tokens, start, widthMm, sizeMm, faces);
    if (count > 0) return { ok: true, count, baselineMm, reach };
  }
}
