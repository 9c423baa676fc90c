import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, ONE, sumOf } from '../quantity/index.ts';
import { findLargestOverrun } from './whipped-fill.ts';

export interface TinForAir {
  readonly brimMl: ExactInput;
  /** Share of the brim volume that stays free under the lid, 0 to below 1. */
  readonly headspaceFraction: ExactInput;
  readonly declaredGrams: ExactInput;
  readonly aimGrams: ExactInput;
}

export interface AirNow {
  /** Of each cup or first tin of this bowl; at least one. */
  readonly gramsPerMl: readonly ExactInput[];
  /** After the round before, where it was weighed: tells what another round may do. */
  readonly gramsPerMlBefore: ExactInput | null;
  readonly unwhippedGramsPerMl: ExactInput | null;
}

export interface AirVerdict {
  /** `more`: may be whipped on; `stop`: leave it; `too-much`: the label's content does not go into the tin. */
  readonly verdict: 'more' | 'stop' | 'too-much';
  /** What goes in up to the headspace. */
  readonly takesGrams: Exact;
  readonly meanGramsPerMl: Exact;
  /** The label's content goes in, the aim does not. */
  readonly isShortOfAim: boolean;
  /** What it would take after another round like the last; null where the round before was not weighed. */
  readonly takesAfterNext: Exact | null;
  /** Below this density the aim does not go in. */
  readonly leastGramsPerMl: Exact;
  /** How far the tin is full at its aim, 0 to 1 and above. */
  readonly fullness: Exact;
  /** Growth now, and the largest at which the label is still reached; null where nobody weighed it unwhipped. */
  readonly overrunPercent: Exact | null;
  readonly largestOverrunPercent: Exact | null;
}

/** With less room than this above the aim nobody whips on without a cup after it (common practice, no source). */
const ROOM_TO_GO_ON = '1.05';

/**
 * Whether whipped butter should take more air, as a tin of known brim volume sees it, in grams.
 *
 * Equation: takes = brim x (1 - headspace) x mean density; too much air: takes < declared; after a round like the last it
 * takes takes x density / density before. Stop: it takes no more than 5 % above the aim, or another round like the last would
 * leave less than the aim. Compared by multiplying: what just fits fits. The largest overrun is that of whipped-fill.
 * Valid range: cups full and levelled; one bowl. Source: University of Guelph, overrun calculations; the rest common
 * practice, no source.
 */
export function judgeAir(tin: TinForAir, now: AirNow): Result<AirVerdict> {
  const problems = problemsOf(tin, now);
  if (problems.length > 0) return refused(...problems);
  const cups = now.gramsPerMl.length;
  const volume = exact(tin.brimMl).times(ONE.minus(tin.headspaceFraction));
  // Sums, and not the mean: a third of a gram would be rounded before it is compared.
  const holds = volume.times(sumOf(now.gramsPerMl));
  const [declared, aim] = [exact(tin.declaredGrams).times(cups), exact(tin.aimGrams).times(cups)];
  const mean = sumOf(now.gramsPerMl).div(cups);
  const { gramsPerMlBefore: before } = now;
  const isNextShort = before !== null && exact(before).gt(mean) && holds.times(mean).lt(aim.times(before));
  const isNear = holds.lte(aim.times(ROOM_TO_GO_ON));
  const air = overrunsOf(tin, now, mean);
  return done({
    verdict: holds.lt(declared) ? 'too-much' : isNextShort || isNear ? 'stop' : 'more',
    takesGrams: holds.div(cups),
    meanGramsPerMl: mean,
    isShortOfAim: holds.gte(declared) && holds.lt(aim),
    takesAfterNext: before === null ? null : holds.times(mean).div(before).div(cups),
    leastGramsPerMl: exact(tin.aimGrams).div(volume),
    fullness: aim.div(holds),
    ...air,
  });
}

function overrunsOf(tin: TinForAir, { unwhippedGramsPerMl }: AirNow, mean: Exact) {
  if (unwhippedGramsPerMl === null) return { overrunPercent: null, largestOverrunPercent: null };
  const largest = findLargestOverrun(
    {
      containerMl: tin.brimMl,
      headspaceFraction: tin.headspaceFraction,
      unwhippedDensityGramsPerMl: unwhippedGramsPerMl,
      inclusions: [],
    },
    tin.declaredGrams,
  );
  return {
    overrunPercent: exact(unwhippedGramsPerMl).minus(mean).times(100).div(mean),
    largestOverrunPercent: largest.ok ? largest.value.largestOverrunPercent : null,
  };
}

function problemsOf(
  tin: TinForAir,
  { gramsPerMl, gramsPerMlBefore, unwhippedGramsPerMl }: AirNow,
): Problem[] {
  const { headspaceFraction, ...above } = { ...tin, gramsPerMlBefore, unwhippedGramsPerMl };
  const first = gramsPerMl.length === 0 ? [problem('no-cup-weighed', 'gramsPerMl')] : [];
  const share = exact(headspaceFraction);
  const head =
    share.gte(1) || share.lt(0)
      ? [
          problem('share-out-of-range', 'headspaceFraction', {
            found: share.toFixed(),
            allowed: '0 to below 1',
          }),
        ]
      : [];
  const values: [string, ExactInput | null][] = [
    ...Object.entries(above),
    ...gramsPerMl.map((value, index): [string, ExactInput] => [`gramsPerMl[${index}]`, value]),
  ];
  return [
    ...first,
    ...head,
    ...values.flatMap(([where, value]) =>
      value === null || exact(value).gt(0)
        ? []
        : [problem('value-not-above', where, { found: exact(value).toFixed(), allowed: 0 })],
    ),
  ];
}
