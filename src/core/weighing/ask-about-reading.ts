import { type Problem, problem } from '../problem.ts';
import { type Exact, type ExactInput, exact } from '../quantity/index.ts';
import { GRAMS_PER_UNIT, type MassUnit } from './mass-unit.ts';

export interface Reading {
  /** As it would be entered: taken for net grams. */
  readonly grams: ExactInput;
  /** What the scale itself showed, with a vessel on it; null or absent: `grams`. */
  readonly grossGrams?: ExactInput | null;
  /** What it is expected to be near; null or absent: nothing is expected. */
  readonly targetGrams?: ExactInput | null;
  /** Step of the scale that it was read off. */
  readonly readabilityGrams?: ExactInput | null;
  readonly capacityGrams?: ExactInput | null;
  /** The reading before it, where two equal ones are worth a question: of the same thing put on twice. */
  readonly lastGrams?: ExactInput | null;
  /** What the tub or tin on the scale weighs empty. */
  readonly tareGrams?: ExactInput | null;
}

/** Codes of the questions; their sentences stand beside those of problems. */
export type ReadingQuestionCode =
  | 'reading-negative'
  | 'reading-above-capacity'
  | 'reading-tare-forgotten'
  | 'reading-ten-times'
  | 'reading-other-unit'
  | 'reading-not-zeroed'
  | 'reading-not-a-step'
  | 'reading-same-as-last';

export interface ReadingQuestion extends Problem {
  readonly code: ReadingQuestionCode;
}

/** How near a reading, put right, must come to what is expected to be taken for a slip: common practice, no source. */
const NEAR = exact('0.05');
/** Within these of what is expected it is a pour too little or too much, not a slip of the point (common practice). */
const PLAIN = { least: exact('0.5'), most: exact(2) } as const;

const POWERS = [10, 100, 1000].map((times) => exact(times));
/** Units that small scales cycle through; pennyweights lie too near to a plain short pour to be told from one. */
const UNITS: readonly MassUnit[] = ['kg', 'oz', 'lb', 'ozt', 'ct', 'grain', 'mg'];

/**
 * Whether a reading looks like a slip, and which: null, or the question that a careful colleague would ask. Nothing is
 * refused here, and nothing put right: a person answers. The gravest question comes first, and only one is asked.
 *
 * A reading that is between half and twice of what is expected is never taken for another unit or a slipped point.
 * Valid range: masses in grams. The nearness of 5 % is common practice, no source.
 */
export function askAboutReading(reading: Reading): ReadingQuestion | null {
  const grams = exact(reading.grams);
  const shown = reading.grossGrams == null ? grams : exact(reading.grossGrams);
  return (
    askNegative(grams) ??
    // Before what the scale holds: a point that slipped lies above that as a rule, and here something can be offered.
    (reading.targetGrams == null ? null : askAgainstTarget(grams, exact(reading.targetGrams), reading)) ??
    askCapacity(shown, reading.capacityGrams) ??
    askStep(shown, reading.readabilityGrams) ??
    askTwice(grams, reading.lastGrams)
  );
}

function ask(
  code: ReadingQuestionCode,
  found: Exact,
  rest: Omit<Problem, 'code' | 'where' | 'found'>,
): ReadingQuestion {
  return { ...problem(code, 'grams', { found: found.toFixed(), ...rest }), code };
}

const askNegative = (grams: Exact): ReadingQuestion | null =>
  grams.lt(0) ? ask('reading-negative', grams, { allowed: 0 }) : null;

const askCapacity = (grams: Exact, capacity: ExactInput | null | undefined): ReadingQuestion | null =>
  capacity != null && grams.gt(capacity)
    ? ask('reading-above-capacity', grams, { allowed: exact(capacity).toFixed() })
    : null;

const isNear = (value: Exact, target: Exact): boolean => value.minus(target).abs().lte(target.times(NEAR));

function askAgainstTarget(
  grams: Exact,
  target: Exact,
  { tareGrams, readabilityGrams }: Reading,
): ReadingQuestion | null {
  if (!target.gt(0) || grams.isZero()) return null;
  const isPlain = grams.gte(target.times(PLAIN.least)) && grams.lte(target.times(PLAIN.most));
  return (
    (tareGrams == null ? null : askTare(grams, target, exact(tareGrams))) ??
    (isPlain ? null : askSlip(grams, target, readabilityGrams))
  );
}

/** The tare stands in the reading: without it the reading is near what is expected, and nearer by half than with it. */
function askTare(grams: Exact, target: Exact, tare: Exact): ReadingQuestion | null {
  const net = grams.minus(tare);
  const isCloser = net.minus(target).abs().times(2).lt(grams.minus(target).abs());
  if (!tare.gt(0) || !isNear(net, target) || !isCloser) return null;
  return ask('reading-tare-forgotten', grams, {
    allowed: target.toFixed(),
    parameters: { tareGrams: tare.toFixed(), netGrams: net.toFixed() },
  });
}

interface Slip {
  readonly code: 'reading-ten-times' | 'reading-other-unit';
  readonly grams: Exact;
  readonly unit: MassUnit | null;
}

/** What the reading would be, put right in each way; units first, so that a thousandth is a kilogram. */
const slipsOf = (grams: Exact): readonly Slip[] => [
  ...UNITS.map((unit) => ({
    code: 'reading-other-unit' as const,
    grams: grams.times(GRAMS_PER_UNIT[unit]),
    unit,
  })),
  ...POWERS.flatMap((times) =>
    [grams.times(times), grams.div(times)].map((put) => ({
      code: 'reading-ten-times' as const,
      grams: put,
      unit: null,
    })),
  ),
];

function askSlip(grams: Exact, target: Exact, step: ExactInput | null | undefined): ReadingQuestion | null {
  let best: Slip | null = null;
  for (const slip of slipsOf(grams)) {
    const isBetter = best === null || slip.grams.minus(target).abs().lt(best.grams.minus(target).abs());
    if (isNear(slip.grams, target) && isBetter) best = slip;
  }
  if (best === null) return null;
  const common = { allowed: target.toFixed() };
  // What the scale would show in grams: nobody enters an ounce to twelve figures.
  const gramsThen = (best.unit === null ? best.grams : roundToStep(best.grams, step)).toFixed();
  return best.unit === null
    ? ask('reading-ten-times', grams, { ...common, parameters: { gramsThen } })
    : ask('reading-other-unit', grams, { ...common, parameters: { gramsThen, unit: best.unit } });
}

/** A scale without a known step: to the milligram. */
function roundToStep(grams: Exact, step: ExactInput | null | undefined): Exact {
  const size = step != null && exact(step).gt(0) ? exact(step) : exact('0.001');
  return grams.div(size).toDecimalPlaces(0).times(size);
}

const askStep = (grams: Exact, step: ExactInput | null | undefined): ReadingQuestion | null =>
  step != null && exact(step).gt(0) && !grams.mod(step).isZero()
    ? ask('reading-not-a-step', grams, { allowed: exact(step).toFixed() })
    : null;

const askTwice = (grams: Exact, last: ExactInput | null | undefined): ReadingQuestion | null =>
  last != null && grams.gt(0) && grams.eq(last) ? ask('reading-same-as-last', grams, {}) : null;
