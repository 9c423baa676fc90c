import { type Problem, problem } from '../problem.ts';
import { type Exact, type ExactInput, exact } from '../quantity/index.ts';
import { askAboutReading } from '../weighing/index.ts';
import { askAboutTin } from './find-tare-spread.ts';

export interface FillReading {
  readonly grossGrams: ExactInput;
  readonly tareGrams: ExactInput;
  readonly declaredGrams: ExactInput;
  readonly aimGrams: ExactInput;
  /** What the empty tin is known to weigh; 0: nobody knows. */
  readonly tinGrams: ExactInput;
  readonly readabilityGrams: ExactInput;
  /** Gross of the tin weighed right before; null: there is none, or it is the same tin, filled up. */
  readonly lastGrossGrams: ExactInput | null;
  /** What the same tin held before it was filled up; null: it was not. */
  readonly refilledNetGrams: ExactInput | null;
  /** The tare was weighed of this very tin; then what tins of the kind weigh may tell of a slip in it. */
  readonly isTareOwn?: boolean;
}

/** Everything that is asked about a tin or its empty weight, and taken once a person says that it is so. */
export const fillQuestionCodes = [
  'scale-held',
  'refilled-not-heavier',
  'tare-forgotten',
  'scale-was-tared',
  'net-ten-times-off',
  'net-far-above-label',
  'reading-tare-forgotten',
  'reading-ten-times',
  'reading-other-unit',
  'reading-not-a-step',
  'reading-same-as-last',
  'tare-odd',
  'tare-unlike',
] as const;

/** A tin that holds more than so many times its label is another kind of tin, or misread (common practice, no source). */
const MOST_TIMES_DECLARED = 2;

/** On a scale with fewer steps to a tin two alike are no wonder, and nobody learns to wave a question away (house rule). */
const STEPS_TO_TELL_APART = 1000;

/** A tin cannot hold less than nothing: refused whatever is said. null: it holds something. */
export function refuseEmptyFill({ grossGrams, tareGrams }: FillReading): Problem | null {
  return exact(grossGrams).gt(tareGrams)
    ? null
    : problem('net-not-above-nought', 'grossGrams', {
        found: exact(grossGrams).toFixed(),
        allowed: exact(tareGrams).toFixed(),
      });
}

/**
 * What a careful colleague would ask about a tin on the scale, the gravest first: filled up and no heavier, tare forgotten, another unit or a
 * slipped point, ten times off, far more than the label, a figure that the scale cannot show, the same tin twice. Nothing
 * is refused here and nothing put right: a person answers.
 */
export const askAboutFill = (fill: FillReading): Problem[] =>
  [
    askOwnTare(fill),
    askRefilled(fill),
    askTare(fill),
    askTared(fill) ?? askGrossSlip(fill) ?? askSlip(fill) ?? askFarAbove(fill),
    askAboutReading({
      grams: exact(fill.grossGrams),
      readabilityGrams: fill.readabilityGrams,
      lastGrams: canTellApart(fill) ? fill.lastGrossGrams : null,
    }),
  ].flatMap((asked) => (asked === null ? [] : [{ ...asked, where: whereOf(asked) }]));

/** A reading is entered as gross here. */
const whereOf = ({ where }: Problem): string => (where === 'grams' ? 'grossGrams' : where);

const netOf = ({ grossGrams, tareGrams }: FillReading): Exact => exact(grossGrams).minus(tareGrams);

const canTellApart = ({ readabilityGrams, declaredGrams }: FillReading): boolean =>
  exact(readabilityGrams).times(STEPS_TO_TELL_APART).lte(declaredGrams);

/** What was filled up holds more than it did: else another tin stands there, or one of the two was misread. */
function askRefilled(fill: FillReading): Problem | null {
  const net = netOf(fill);
  // Of a tin that held more than the aim something was taken out again.
  return fill.refilledNetGrams !== null &&
    exact(fill.refilledNetGrams).lte(fill.aimGrams) &&
    net.lte(fill.refilledNetGrams)
    ? problem('refilled-not-heavier', 'grossGrams', {
        found: net.toFixed(),
        allowed: exact(fill.refilledNetGrams).toFixed(),
      })
    : null;
}

function askTare(fill: FillReading): Problem | null {
  const net = netOf(fill);
  if (!isTareForgotten({ ...fill, netGrams: net })) return null;
  return problem('tare-forgotten', 'tareGrams', {
    found: net.toFixed(),
    allowed: exact(fill.tinGrams).toFixed(),
    parameters: {
      withTare: exact(fill.grossGrams).minus(fill.tinGrams).toFixed(),
      aim: exact(fill.aimGrams).toFixed(),
    },
  });
}

/** A tenth or more off what tins of the kind weigh is another tin, or misread: it is filled up until it looks right. */
function askOwnTare({ tareGrams, tinGrams, isTareOwn = false }: FillReading): Problem | null {
  return isTareOwn ? askAboutTin(tareGrams, tinGrams) : null;
}

/** How near a reading, put right, comes to what is expected (common practice, no source). */
const NEAR = '0.05';

/** The scale was at nought with the tin on it: as it stands the reading is the aim itself, and the tare off it too little. */
function askTared(fill: FillReading): Problem | null {
  const { grossGrams, tareGrams, aimGrams, declaredGrams } = fill;
  const gross = exact(grossGrams);
  const isNear = gross.minus(aimGrams).abs().lte(exact(aimGrams).times(NEAR));
  if (!exact(tareGrams).gt(0) || !isNear || netOf(fill).gte(declaredGrams)) return null;
  return problem('scale-was-tared', 'grossGrams', {
    found: netOf(fill).toFixed(),
    allowed: exact(aimGrams).toFixed(),
    parameters: { gross: gross.toFixed(), tare: exact(tareGrams).toFixed() },
  });
}

/** A point or a unit slipped in the figure on the scale, the tin in it: what it should show is the aim and the tare. */
function askGrossSlip({ grossGrams, tareGrams, aimGrams }: FillReading): Problem | null {
  if (!exact(tareGrams).gt(0)) return null;
  const asked = askAboutReading({ grams: grossGrams, targetGrams: exact(aimGrams).plus(tareGrams) });
  return asked === null || asked.code === 'reading-negative' ? null : asked;
}

/** Where no unit and no power of ten explains it, a tenth or ten times of the label is asked about all the same. */
function askSlip(fill: FillReading): Problem | null {
  const net = netOf(fill);
  const asked = askAboutReading({ grams: net, targetGrams: fill.aimGrams });
  if (asked !== null && asked.code !== 'reading-negative') return asked;
  const isFar = net.gte(exact(fill.declaredGrams).times(10)) || net.times(10).lte(fill.declaredGrams);
  return isFar
    ? problem('net-ten-times-off', 'grossGrams', {
        found: net.toFixed(),
        allowed: exact(fill.declaredGrams).toFixed(),
      })
    : null;
}

/** Twice the label to the microgram is still taken. */
function askFarAbove(fill: FillReading): Problem | null {
  const net = netOf(fill);
  return net.gt(exact(fill.declaredGrams).times(MOST_TIMES_DECLARED))
    ? problem('net-far-above-label', 'grossGrams', {
        found: net.toFixed(),
        allowed: exact(fill.declaredGrams).toFixed(),
      })
    : null;
}

interface TareQuestion extends Pick<FillReading, 'tareGrams' | 'aimGrams' | 'tinGrams'> {
  readonly netGrams: ExactInput;
}

/**
 * Whether the tin was weighed along: less than half of what it is known to weigh was taken off, and the net mass lies
 * above the aim and nearer to it with the whole tin taken off than without (common practice, no source).
 */
export function isTareForgotten({ netGrams, tareGrams, aimGrams, tinGrams }: TareQuestion): boolean {
  const net = exact(netGrams);
  const missing = exact(tinGrams).minus(tareGrams);
  const isHalf = exact(tareGrams).times(2).lt(tinGrams);
  const without = net.minus(missing).minus(aimGrams).abs();
  return isHalf && net.gt(aimGrams) && without.lt(net.minus(aimGrams).abs());
}
