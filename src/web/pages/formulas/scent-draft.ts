import { readDecimal, sumOf, toText } from '../../../core/quantity/index.ts';
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

/** What is not typed, or cannot be read yet, is the whole range or nothing. */
function fractionOf(typed: string, otherwise: string): string {
  const read = typed.trim() === '' ? undefined : readDecimal(typed, 'share');
  return read?.ok ? toText(read.value.div(100)) : otherwise;
}

const partOf = (typed: string): string => {
  const read = readDecimal(typed, 'share');
  return read.ok && read.value.gt(0) ? toText(read.value) : '0';
};

/** The oils with their lines, as the calculation wants them; none where nothing counts as scent. */
export const oilsOf = ({ oils, isFree }: ScentDraft) =>
  oils.flatMap((oil, line) => {
    if (!oil.isScent) return [];
    const share = isFree
      ? ([fractionOf(oil.least, '0'), fractionOf(oil.most, '1')] as const)
      : partOf(oil.part);
    return [{ line, share }];
  });

/**
 * The recipe with so much of each oil, the rest as it is: rest x percent / (100 - all of the scent), to the microgram, which
 * is what the recipe keeps, rounded down.
 */
export function gramsWith(
  lines: readonly Line[],
  oils: readonly { readonly line: number }[],
  percents: readonly string[],
): string[] {
  const isOil = new Set(oils.map(({ line }) => line));
  const rest = sumOf(lines.filter((_, index) => !isOil.has(index)).map(({ grams }) => grams));
  const left = sumOf(percents).negated().plus(100);
  return lines.map(({ grams }, index) => {
    const place = oils.findIndex(({ line }) => line === index);
    if (place < 0) return grams;
    return toText(
      rest
        .times(percents[place] ?? '0')
        .div(left)
        .toDecimalPlaces(6, 1),
    );
  });
}
