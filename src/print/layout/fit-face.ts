import { done, type Problem, problem, type Result, refused } from '../../core/problem.ts';
import type { Faces } from './face.ts';
import { type FacePlan, fitSteps, tryStep } from './fit-steps.ts';
import type { FlowFailure } from './flow-blocks.ts';
import { nameOfElement } from './name-of-element.ts';
import { type FaceSize, heightOf, widthOf } from './outline.ts';
import type { Placed } from './placed.ts';

export interface FittedFace {
  readonly items: readonly Placed[];
  readonly step: number;
}

/** The largest of the plan's sizes that fits; else the element that did not, and the space that all of it would need. */
export function fitFace(plan: FacePlan, faces: Faces): Result<FittedFace> {
  const fitted = fitSteps(plan, faces);
  return fitted.ok ? done(fitted) : refused(problemOfRoom(plan, fitted, faces));
}

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
  const region = plan.regionOf(size, plan.stepCount - 1);
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
