import type { Faces } from './face.ts';
import { type Flowed, type FlowFailure, flowBlocks } from './flow-blocks.ts';
import { type FaceSize, heightOf, insetRegion, type Region, widthOf } from './outline.ts';
import type { Panel } from './panel.ts';
import type { Box, Placed } from './placed.ts';
import { placeRow, rowHeightMm, rowWidthMm } from './symbol-row.ts';

/** White above the row of symbols, beside it, and above the foot. */
const GAP_MM = 1.2;
/** 21 CFR 701.13(f): within the bottom 30 % of the principal display panel (row us-net-place). */
export const FOOT_SHARE = 0.3;

/** What is fixed on a panel of this size, and where text may stand besides. */
export interface Furnished {
  readonly ok: true;
  readonly region: Region;
  readonly items: readonly Placed[];
  /** Where the symbols stand, with the white that they ask for. */
  readonly boxes: readonly Box[];
}

export function furnish(panel: Panel, size: FaceSize, step: number, faces: Faces): Furnished | FlowFailure {
  const whole = insetRegion(size, panel.insetMm);
  const foot = placeFoot(panel, size, whole, step, faces);
  if (foot !== null && !foot.ok) return foot;
  const bottomMm = foot === null ? whole.bottomMm : topOf(foot) - GAP_MM;
  const above = foot === null ? whole : cutBelow(whole, bottomMm);
  const footItems = foot?.items ?? [];
  const [first] = panel.row;
  if (first === undefined) return { ok: true, region: above, items: footItems, boxes: [] };
  const box = rowBox(panel, size, whole, bottomMm);
  if (box === null) return noRoom(panel, whole, first.element);
  const region = size.shape === 'round' ? cutBelow(above, box.top - GAP_MM) : cutCorner(above, box);
  const items = [...footItems, ...placeRow(panel.row, box.left, box.bottom)];
  return { ok: true, region, items, boxes: [box] };
}

/** A row that is wider than the panel lacks width, not height. */
function noRoom({ row }: Panel, { widestMm }: Region, element: string): FlowFailure {
  const wordMm = rowWidthMm(row);
  return wordMm > widestMm ? { ok: false, element, wordMm, roomMm: widestMm } : { ok: false, element };
}

/** In a circle as high as allowed, since it narrows downwards; else on the lower edge. */
function placeFoot(
  panel: Panel,
  size: FaceSize,
  whole: Region,
  step: number,
  faces: Faces,
): Flowed | FlowFailure | null {
  const block = panel.footAt?.(step);
  if (block === undefined) return null;
  const highestMm = heightOf(size) * (1 - FOOT_SHARE);
  const placed = flowBlocks([block], whole, highestMm, panel.align, faces);
  if (!placed.ok || size.shape === 'round') return placed;
  const startMm = Math.max(highestMm, highestMm + whole.bottomMm - placed.endMm);
  return flowBlocks([block], whole, startMm, panel.align, faces);
}

const topOf = ({ items }: Flowed): number =>
  Math.min(...items.map((item) => (item.kind === 'text' ? item.ink.top : Number.POSITIVE_INFINITY)));

/** Rectangle: the corner at the bottom right. Round: in the middle, as low as the circle takes it. Null where it does not fit. */
function rowBox(panel: Panel, size: FaceSize, whole: Region, bottomMm: number): Box | null {
  const [width, height] = [rowWidthMm(panel.row), rowHeightMm(panel.row)];
  const isRound = size.shape === 'round';
  const bottom = isRound ? Math.min(bottomMm, roundBottom(size, width, panel.insetMm)) : bottomMm;
  const top = bottom - height;
  const reach = whole.reachOf(top, bottom);
  if (reach === null) return null;
  const left = isRound ? (widthOf(size) - width) / 2 : reach.right - width;
  const fits = left >= reach.left - 1e-6 && left + width <= reach.right + 1e-6;
  return fits ? { left, right: left + width, top, bottom } : null;
}

/** Where a box of this width touches the circle: Pythagoras with half the width. */
function roundBottom(size: FaceSize, widthMm: number, insetMm: number): number {
  const radius = widthOf(size) / 2;
  return radius + Math.sqrt(Math.max(0, (radius - insetMm) ** 2 - (widthMm / 2) ** 2));
}

const cutBelow = (region: Region, bottomMm: number): Region => ({
  ...region,
  bottomMm,
  reachOf: (top, bottom) => (bottom > bottomMm + 1e-6 ? null : region.reachOf(top, bottom)),
});

const cutCorner = (region: Region, box: Box): Region => ({
  ...region,
  reachOf: (top, bottom) => {
    const reach = region.reachOf(top, bottom);
    if (reach === null || bottom <= box.top - GAP_MM) return reach;
    const right = box.left - GAP_MM;
    return right > reach.left ? { ...reach, right } : null;
  },
});
