import { done, type Problem, problem, type Result, refused } from '../../core/problem.ts';
import type { Block } from './block.ts';
import type { Faces } from './face.ts';
import { type Align, type Flowed, type FlowFailure, flowBlocks } from './flow-blocks.ts';
import { nameOfElement } from './name-of-element.ts';
import { type FaceSize, heightOf, type Region, widthOf } from './outline.ts';
import type { Placed } from './placed.ts';

/** A face that can be set in several sizes, largest first. */
export interface FacePlan {
  readonly size: FaceSize;
  readonly stepCount: number;
  blocksAt(step: number): readonly Block[];
  /** Where text may stand on a face of this size; a failure where something fixed, such as a symbol, finds no room. */
  regionOf(size: FaceSize): Region | FlowFailure;
  readonly align: Align;
  readonly isCentredInHeight: boolean;
}

export interface FittedFace {
  readonly items: readonly Placed[];
  readonly step: number;
}

/** The largest of the plan's sizes that fits; else the element that did not, and the space that all of it would need. */
export function fitFace(plan: FacePlan, faces: Faces): Result<FittedFace> {
  let failure: FlowFailure | undefined;
  for (let step = 0; step < plan.stepCount; step += 1) {
    const tried = tryStep(plan, step, plan.size, faces);
    if (tried.ok) return done({ items: settle(plan, step, tried, faces).items, step });
    failure = tried;
  }
  if (failure === undefined) throw new RangeError('a face plan needs at least one size');
  return refused(problemOfRoom(plan, failure, faces));
}

function tryStep(plan: FacePlan, step: number, size: FaceSize, faces: Faces): Flowed | FlowFailure {
  const region = plan.regionOf(size);
  if ('ok' in region) return region;
  return flowBlocks(plan.blocksAt(step), region, region.topMm, plan.align, faces);
}

/** Moves the text down until the room above it equals the room below: in a circle this changes the line breaks, so halve. */
function settle(plan: FacePlan, step: number, top: Flowed, faces: Faces): Flowed {
  const region = plan.regionOf(plan.size);
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

/** No label that this program prints is larger than a sheet of paper. */
const LARGEST_TRIED_MM = 300;

function problemOfRoom(plan: FacePlan, failure: FlowFailure, faces: Faces): Problem {
  const { size } = plan;
  const parameters = { element: nameOfElement(failure.element) };
  if (failure.wordMm !== undefined && size.shape === 'rectangle') {
    const allowed = roundUp(size.widthMm + failure.wordMm - widestOf(plan, size));
    return problem('label-width-too-small', failure.element, { found: size.widthMm, allowed, parameters });
  }
  const code = size.shape === 'round' ? 'label-diameter-too-small' : 'label-height-too-small';
  const allowed = smallestThatFits(plan, faces);
  return allowed === null
    ? problem('label-text-too-long', failure.element, { found: describe(size), parameters })
    : problem(code, failure.element, { found: heightOf(size), allowed, parameters });
}

function widestOf(plan: FacePlan, size: FaceSize): number {
  const region = plan.regionOf(size);
  return 'ok' in region ? 0 : region.widestMm;
}

const describe = (size: FaceSize): string =>
  size.shape === 'round' ? `${size.diameterMm} mm` : `${widthOf(size)} x ${heightOf(size)} mm`;

/** Smallest diameter, or height at the given width, that takes all of the face at its smallest letters. */
function smallestThatFits(plan: FacePlan, faces: Faces): number | null {
  const fits = (sizeMm: number): boolean =>
    tryStep(plan, plan.stepCount - 1, withHeight(plan.size, sizeMm), faces).ok;
  if (!fits(LARGEST_TRIED_MM)) return null;
  let tooSmall = heightOf(plan.size);
  let enough = LARGEST_TRIED_MM;
  while (enough - tooSmall > 0.2) {
    const middle = (tooSmall + enough) / 2;
    if (fits(middle)) enough = middle;
    else tooSmall = middle;
  }
  return roundUp(enough);
}

const withHeight = (size: FaceSize, sizeMm: number): FaceSize =>
  size.shape === 'round' ? { ...size, diameterMm: sizeMm } : { ...size, heightMm: sizeMm };

/** To whole millimetres, upwards: what is asked for must be enough. */
const roundUp = (mm: number): number => Math.ceil(mm - 1e-9);
