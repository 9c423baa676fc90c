import type { Block } from './block.ts';
import type { Faces } from './face.ts';
import { type Align, type Flowed, type FlowFailure, flowBlocks } from './flow-blocks.ts';
import type { FaceSize, Region } from './outline.ts';
import type { Placed } from './placed.ts';

/** A face that can be set in several sizes, largest first. */
export interface FacePlan {
  readonly size: FaceSize;
  readonly stepCount: number;
  blocksAt(step: number): readonly Block[];
  /** Where text may stand on a face of this size; a failure where something fixed, such as a symbol, finds no room. */
  regionOf(size: FaceSize, step: number): Region | FlowFailure;
  readonly align: Align;
  readonly isCentredInHeight: boolean;
}

export interface FittedSteps {
  readonly ok: true;
  readonly items: readonly Placed[];
  readonly step: number;
}

/** The largest of the plan's sizes that fits; else what stopped the smallest. */
export function fitSteps(plan: FacePlan, faces: Faces): FittedSteps | FlowFailure {
  let failure: FlowFailure | undefined;
  for (let step = 0; step < plan.stepCount; step += 1) {
    const tried = tryStep(plan, step, plan.size, faces);
    if (tried.ok) return { ok: true, items: settle(plan, step, tried, faces).items, step };
    failure = tried;
  }
  if (failure === undefined) throw new RangeError('a face plan needs at least one size');
  return failure;
}

export function tryStep(plan: FacePlan, step: number, size: FaceSize, faces: Faces): Flowed | FlowFailure {
  const region = plan.regionOf(size, step);
  if ('ok' in region) return region;
  return flowBlocks(plan.blocksAt(step), region, region.topMm, plan.align, faces);
}

/** Moves the text down until the room above it equals the room below: in a circle this changes the line breaks, so halve. */
function settle(plan: FacePlan, step: number, top: Flowed, faces: Faces): Flowed {
  const region = plan.regionOf(plan.size, step);
  if (!plan.isCentredInHeight || 'ok' in region) return top;
  let best = top;
  let above = region.topMm;
  let below = region.bottomMm;
  for (let halving = 0; halving < 9; halving += 1) {
    const startMm = (above + below) / 2;
    const tried = flowBlocks(plan.blocksAt(step), region, startMm, plan.align, faces);
    const isTooLow = !tried.ok || topOf(tried) - region.topMm > region.bottomMm - tried.endMm;
    if (isTooLow) below = startMm;
    else {
      above = startMm;
      best = tried;
    }
  }
  return best;
}

const topOf = (flowed: Flowed): number =>
  Math.min(...flowed.items.map((item) => (item.kind === 'text' ? item.ink.top : Number.POSITIVE_INFINITY)));
