import { type Problem, problem } from '../../core/problem.ts';
import type { Block } from './block.ts';
import type { Faces } from './face.ts';
import { type FacePlan, tryStep } from './fit-steps.ts';
import type { FlowFailure } from './flow-blocks.ts';
import { type FaceSize, heightOf, widthOf } from './outline.ts';

/** How a person calls the piece and what stands on it. */
export interface RoomNames {
  readonly piece: string;
  element(path: string): string;
}

/** No label that this program prints is larger than a sheet of paper. */
const LARGEST_TRIED_MM = 300;

/**
 * One problem for each element that finds no room in the smallest letters, with how much the piece lacks for it and for all
 * that stands before it. What would fit without those is not named.
 */
export function findLackingRoom(
  plan: FacePlan,
  failure: FlowFailure,
  names: RoomNames,
  faces: Faces,
): Problem[] {
  const last = plan.stepCount - 1;
  const blocks = plan.blocksAt(last);
  if (!blocks.some(({ element }) => element === failure.element)) {
    return [lackOf({ ...plan, blocksAt: () => [] }, failure, names, faces)];
  }
  const problems = new Map<string, Problem>();
  let fitting: readonly Block[] = [];
  let wanted: readonly Block[] = [];
  for (const block of blocks) {
    const tried = tryStep({ ...plan, blocksAt: () => [...fitting, block] }, last, plan.size, faces);
    if (tried.ok) fitting = [...fitting, block];
    if (tried.ok || block.kind !== 'rule') wanted = [...wanted, block];
    if (tried.ok || block.kind === 'rule') continue;
    const upTo = wanted;
    const own = tried.wordMm === undefined ? { ok: false as const, element: block.element } : tried;
    problems.set(block.element, lackOf({ ...plan, blocksAt: () => upTo }, own, names, faces));
    if (tried.wordMm !== undefined) wanted = wanted.slice(0, -1);
  }
  return [...problems.values()];
}

function lackOf(plan: FacePlan, failure: FlowFailure, names: RoomNames, faces: Faces): Problem {
  const { size } = plan;
  const isWord = failure.wordMm !== undefined && size.shape === 'rectangle';
  const measure = isWord ? 'width' : size.shape === 'round' ? 'diameter' : 'height';
  const found = isWord ? widthOf(size) : heightOf(size);
  const allowed = isWord ? found + widthLack(failure) : smallestThatFits(plan, faces);
  const parameters = { element: names.element(failure.element), piece: names.piece, measure };
  if (allowed === null) return problem('label-room-nowhere', failure.element, { found, parameters });
  const lackMm = Math.round((allowed - found) * 10) / 10;
  return problem('label-element-lacks-room', failure.element, {
    found,
    allowed,
    parameters: { ...parameters, lackMm },
  });
}

/** In tenths of a millimetre, upwards. */
const widthLack = ({ wordMm = 0, roomMm = 0 }: FlowFailure): number =>
  Math.ceil((wordMm - roomMm) * 10 - 1e-6) / 10;

/** Smallest diameter, or height at the given width, in tenths of a millimetre: what is asked for must be enough. */
function smallestThatFits(plan: FacePlan, faces: Faces): number | null {
  const fits = (tenths: number): boolean =>
    tryStep(plan, plan.stepCount - 1, withHeight(plan.size, tenths / 10), faces).ok;
  let enough = LARGEST_TRIED_MM * 10;
  if (!fits(enough)) return null;
  let tooSmall = Math.floor(heightOf(plan.size) * 10);
  while (enough - tooSmall > 1) {
    const middle = Math.floor((tooSmall + enough) / 2);
    if (fits(middle)) enough = middle;
    else tooSmall = middle;
  }
  return enough / 10;
}

const withHeight = (size: FaceSize, sizeMm: number): FaceSize =>
  size.shape === 'round' ? { ...size, diameterMm: sizeMm } : { ...size, heightMm: sizeMm };
