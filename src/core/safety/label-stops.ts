import { type Fraction, fractionOf, overlapOf, stretchAbove } from '../linear/index.ts';
import type { ExactInput } from '../quantity/index.ts';
import { countAsMoved, countNow, difference, level, type MovingLine } from './moving-line.ts';
import type { Counted, RoomStop } from './room-breaks.ts';

/** An ingredient as the label lists it; by line, how much of it is this ingredient, as a fraction. */
export interface ListedIngredient {
  readonly name: string;
  /** Colourants stand last, in any order. */
  readonly isColourant: boolean;
  readonly weights: readonly Fraction[];
}

/** What a label lists for one market, in the order in which it stands there. */
export interface ListedIngredients {
  readonly about: string;
  readonly ingredients: readonly ListedIngredient[];
  /** From which share downward the order is free. */
  readonly order: { readonly thresholdPercent: ExactInput; readonly freeWhen: 'below' | 'at-most' };
}

interface CountedIngredient extends ListedIngredient, Counted {}

type LineStops = (line: MovingLine) => RoomStop[];

/**
 * Where the list as it is printed is no longer right. A before B is right as long as there is no more of B than of A, or B
 * is so little that its order is free; what is left out altogether leaves the list.
 */
export function orderStops(
  { about, ingredients, order }: ListedIngredients,
  percents: readonly Fraction[],
): LineStops {
  const counted = ingredients.map(
    (one): CountedIngredient => ({ ...one, ...countNow(one.weights, percents) }),
  );
  const ordered = counted.filter(({ isColourant }) => !isColourant);
  const pairs = ordered.flatMap((first, index) =>
    ordered
      .slice(index + 1)
      .map((second): readonly [CountedIngredient, CountedIngredient] => [first, second]),
  );
  return (line) => [
    ...counted.flatMap((one) => leavesList(one, line, about)),
    ...pairs.flatMap(([first, second]) =>
      isOfLine(first, line) || isOfLine(second, line) ? swaps(first, second, order, line, about) : [],
    ),
  ];
}

/** Two that are both of the rest alone keep their proportion. */
const isOfLine = ({ weights }: CountedIngredient, { place }: MovingLine): boolean =>
  (weights[place]?.sign ?? 0) > 0;

function leavesList(one: CountedIngredient, line: MovingLine, about: string): RoomStop[] {
  const amount = countAsMoved(one, line);
  const outside = stretchAbove(difference(NOTHING, amount), true);
  return outside ? [{ breaks: { what: 'leaves-list', name: one.name }, about: [about], outside }] : [];
}

const NOTHING = level(fractionOf(0));

function swaps(
  first: CountedIngredient,
  second: CountedIngredient,
  { thresholdPercent, freeWhen }: ListedIngredients['order'],
  line: MovingLine,
  about: string,
): RoomStop[] {
  const behind = countAsMoved(second, line);
  const isMore = stretchAbove(difference(behind, countAsMoved(first, line)), false);
  const isOrdered = stretchAbove(
    difference(behind, level(fractionOf(thresholdPercent))),
    freeWhen === 'below',
  );
  const outside = overlapOf(isMore, isOrdered);
  return outside
    ? [{ breaks: { what: 'order', first: first.name, second: second.name }, about: [about], outside }]
    : [];
}

/** An allergen that is named over its threshold; by line, how much of it counts. */
export interface CountedName {
  readonly name: string;
  readonly thresholdPercent: ExactInput;
  readonly weights: readonly Fraction[];
  readonly about: string;
}

/** Named over the threshold, not at it: where one that is named need not be, and one that is not has to be. */
export function nameStops(
  { name, thresholdPercent, weights, about }: CountedName,
  percents: readonly Fraction[],
): LineStops {
  const counted = countNow(weights, percents);
  const threshold = level(fractionOf(thresholdPercent));
  const isNamed = counted.now.compare(fractionOf(thresholdPercent)) > 0;
  return (line) => {
    const amount = countAsMoved(counted, line);
    const outside = isNamed
      ? stretchAbove(difference(threshold, amount), true)
      : stretchAbove(difference(amount, threshold), false);
    const what = isNamed ? 'name-dropped' : 'name-added';
    return outside ? [{ breaks: { what, name }, about: [about], outside }] : [];
  };
}
