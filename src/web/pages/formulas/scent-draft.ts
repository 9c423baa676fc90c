import { type Exact, exact, roundToStep, sumOf, toText, ZERO } from '../../../core/quantity/index.ts';
import type { Formula } from './formula.ts';

type Line = NonNullable<Formula['latest']>['lines'][number];

/** One line of the recipe: whether it is scent, and how much of the scent it may be. */
export interface OilDraft {
  readonly isScent: boolean;
  /** A part of the scent. */
  readonly part: string;
  /** Percent of the scent, where it may vary; both empty where it may be anything. */
  readonly least: string;
  readonly most: string;
}

export interface ScentDraft {
  readonly oils: readonly OilDraft[];
  /** Proportions as given, or free within a range for each. */
  readonly isFree: boolean;
  readonly mostPercent: string;
  readonly batchGrams: string;
  readonly scaleId: string;
}

/** As the recipe is written: what is a scent counts as one, in the proportions that it has. */
export const firstScent = (lines: readonly Line[], isScent: (line: Line) => boolean): ScentDraft => ({
  oils: lines.map((line) => ({ isScent: isScent(line), part: line.grams, least: '', most: '' })),
  isFree: false,
  mostPercent: '',
  batchGrams: '',
  scaleId: '',
});

export const hasScent = ({ oils }: ScentDraft): boolean => oils.some(({ isScent }) => isScent);

/** What is weighed where no scale is chosen (common practice, no source). */
const USUAL_STEP = '0.01';

/**
 * The recipe with so much percent of each oil, as it is weighed: the whole as heavy as before; each oil rounded down to the
 * step of its scale, so that no more of it goes in than was found; the other lines in their proportions, rounded down
 * too, and the heaviest of them takes what is left over.
 */
export function gramsWith(
  lines: readonly Line[],
  oils: readonly { readonly line: number }[],
  percents: readonly string[],
  step: string = USUAL_STEP,
): string[] {
  const whole = sumOf(lines.map(({ grams }) => grams));
  const placeOf = new Map(oils.map(({ line }, place) => [line, place]));
  const others = lines.flatMap(({ grams }, line) =>
    placeOf.has(line) ? [] : [{ line, grams: exact(grams) }],
  );
  const rest = sumOf(others.map(({ grams }) => grams));
  const weighed = new Map(
    oils.map(({ line }, place) => [line, roundDown(whole.times(percents[place] ?? '0').div(100), step)]),
  );
  const left = whole.minus(sumOf([...weighed.values()]));
  const [heaviest] = others.toSorted((one, other) => other.grams.cmp(one.grams));
  for (const { line, grams } of others) weighed.set(line, roundDown(left.times(grams).div(rest), step));
  if (heaviest) {
    const lighter = others.filter(({ line }) => line !== heaviest.line);
    weighed.set(heaviest.line, left.minus(sumOf(lighter.map(({ line }) => weighed.get(line) ?? ZERO))));
  }
  return lines.map((_, line) => toText(weighed.get(line) ?? ZERO));
}

/** What the step would leave nothing of is kept finer: a line of nought is no line. */
function roundDown(grams: Exact, step: string): Exact {
  const rounded = roundToStep(grams, step, 'down');
  if (!rounded.isZero() || grams.lt(MICROGRAM)) return rounded;
  return roundDown(grams, toText(exact(step).div(10)));
}

const MICROGRAM = '0.000001';
