import { describe, expect, it } from 'vitest';
import { limits } from '../../src/catalogue/limits.ts';
import { must } from '../../src/core/problem.ts';
import {
  type RestrictedSubstance,
  type RestrictionRule,
  restrictedSubstances,
} from '../../src/reference/index.ts';
import { justAbove, justBelow } from './least-step.ts';

/**
 * Every rule of the annexes as transcribed (Commission ingredient database, December 2025; Great Britain from memory where
 * the row says so), asked for a product that the rule itself describes: at its figure and on both sides of it. Which
 * figure decides there is worked out here from the rows by the plain reading: the rules that speak of this market, use,
 * age and day; of them those for the product type, else those for the body part; of those the lowest. Exact: no tolerance.
 */
interface Product {
  readonly market: 'EU' | 'NI' | 'GB';
  readonly use: 'leave-on' | 'rinse-off';
  readonly bodyPart: string;
  readonly productType?: string;
  readonly minAgeMonths: number;
  readonly date: string;
  readonly category: string;
}

const LEAST = 1e-12;
const ADULT_MONTHS = 216;
/** After the first day of every rule that has one. */
const DATE = '2030-01-01';

/** The product that a rule describes; what it leaves open stays on the body of adults. */
const productsOf = (rule: RestrictionRule): Product[] =>
  rule.markets.map((market) => ({
    market,
    use: rule.use ?? 'leave-on',
    bodyPart: rule.bodyPart ?? 'body',
    ...(rule.productType !== undefined && { productType: rule.productType }),
    minAgeMonths:
      rule.minAgeMonths ?? (rule.maxAgeMonths === undefined ? ADULT_MONTHS : rule.maxAgeMonths - 1),
    date: DATE,
    // A category that implies no product type, so that what the rule leaves open stays open.
    category: '12',
  }));

/** Conditions that cannot be read off a product are taken as met; these can. */
function isConditionMet({ onlyIf }: RestrictionRule, product: Product): boolean {
  const sprays = /spray|powder|^(?:.*-)?fragrance$|toilette|^deodorant$/;
  if (onlyIf === 'not-oral') return product.bodyPart !== 'oral';
  if (onlyIf === 'lung-exposure' || onlyIf === 'aerosol-spray') return sprays.test(product.productType ?? '');
  if (onlyIf === 'with-nitrosating-agents') return false;
  if (onlyIf === 'intended-for-children') return product.minAgeMonths < 144;
  return true;
}

/** Wider types that a type is a kind of. */
const WIDER: Readonly<Record<string, readonly string[]>> = {
  lipstick: ['lip-product'],
  'roll-on-deodorant': ['deodorant'],
  'deodorant-spray': ['deodorant'],
  'body-lotion-spray': ['body-lotion'],
  mascara: ['eye-make-up'],
  eyeliner: ['eye-make-up'],
  'eye-shadow': ['eye-make-up'],
  'loose-face-powder': ['powder'],
  'fine-fragrance': ['fragrance'],
  'eau-de-toilette': ['fragrance'],
  'fragrance-cream': ['fragrance'],
  'hydroalcoholic-fragrance': ['fragrance'],
};
const typesOf = ({ productType }: Product): readonly string[] =>
  productType === undefined ? [] : [productType, ...(WIDER[productType] ?? [])];

const speaksOf = (rule: RestrictionRule, product: Product): boolean =>
  rule.markets.includes(product.market) &&
  (rule.use ?? product.use) === product.use &&
  (rule.bodyPart ?? product.bodyPart) === product.bodyPart &&
  (rule.productType === undefined || typesOf(product).includes(rule.productType)) &&
  !typesOf(product).some((type) => (rule.exceptProductTypes ?? []).some((not) => not === type)) &&
  product.minAgeMonths >= (rule.minAgeMonths ?? 0) &&
  product.minAgeMonths < (rule.maxAgeMonths ?? Number.POSITIVE_INFINITY) &&
  product.date >= (rule.from ?? '') &&
  isConditionMet(rule, product);

const percentOf = ({ value, unit }: RestrictionRule): number =>
  unit === 'mg-per-kg' ? Number(((value ?? 0) / 10_000).toPrecision(12)) : (value ?? 0);

/** A share of the finished product that is counted as it was put in. */
const isShare = ({ basis, quantity, unit, asWhat }: RestrictionRule): boolean =>
  basis === undefined &&
  quantity === 'max' &&
  (unit === undefined || unit === 'mg-per-kg') &&
  (asWhat === undefined ||
    ['cumin oil', 'furocoumarins in total', 'trace from ingredients'].includes(asWhat));

function mostSpecific(rules: readonly RestrictionRule[], product: Product): readonly RestrictionRule[] {
  const byType = typesOf(product)
    .map((type) => rules.filter(({ productType }) => productType === type))
    .find((found) => found.length > 0);
  const typed = byType ?? rules;
  const ofPart = typed.filter(({ bodyPart }) => bodyPart !== undefined);
  return ofPart.length > 0 ? ofPart : typed;
}

interface Reading {
  readonly row: RestrictedSubstance;
  readonly rule: RestrictionRule;
  readonly product: Product;
  readonly isProhibited: boolean;
  /** A rule that speaks of it has a figure that nobody knows. */
  readonly isNotKnown: boolean;
  /** The deciding figure, where all that decides is comparable; undefined: none. */
  readonly decides: RestrictionRule | undefined;
  /** It counts something that the composition does not say. */
  readonly isCountedOtherwise: boolean;
}

const READINGS: readonly Reading[] = restrictedSubstances.flatMap((row) =>
  row.rules.flatMap((rule) =>
    productsOf(rule).map((product): Reading => {
      const holding = row.rules.filter((each) => speaksOf(each, product));
      const maxima = mostSpecific(
        holding.filter(({ quantity, basis }) => quantity === 'max' && basis === undefined),
        product,
      );
      const shares = maxima.filter((each) => isShare(each) && typeof each.value === 'number');
      return {
        row,
        rule,
        product,
        isProhibited: holding.some(({ quantity }) => quantity === 'prohibited'),
        isNotKnown: maxima.some(({ value }) => value === null),
        decides: shares.toSorted((one, other) => percentOf(one) - percentOf(other))[0],
        isCountedOtherwise: maxima.some((each) => !isShare(each) && each.quantity === 'max'),
      };
    }),
  ),
);

function wordsOn({ row, product }: Reading, percent: number): string[] {
  const contribution = { name: row.name, percent, ...(row.origin !== undefined && { origin: row.origin }) };
  const answer = must(limits.run({ ...product, contributions: [contribution] }));
  return answer.verdicts
    .filter(({ kind, reason }) => kind === 'law' && reason !== 'needs-certificate')
    .map(({ verdict }) => verdict);
}

/** A row may be judged by itself and in a group that shares one limit: the stricter counts. */
const worstOf = (words: readonly string[]): string | undefined =>
  ['prohibited', 'over', 'unknown', 'within'].find((word) => words.includes(word));

const told = ({ rule, product }: Reading) => [rule.id, product.market, product.use, product.minAgeMonths];
/** Two rows of one name in one market are judged side by side: each by its own. */
const isAlone = ({ row, product }: Reading): boolean =>
  restrictedSubstances.filter(
    (other) =>
      other.rules.some(({ markets }) => markets.includes(product.market)) &&
      [other.name, ...(other.aliases ?? [])].some((name) => name.toLowerCase() === row.name.toLowerCase()),
  ).length === 1;

const alone = READINGS.filter(isAlone);

describe('the rules of the annexes, each for the product that it describes', () => {
  it('are more than four hundred, in three markets', () => {
    expect(restrictedSubstances.flatMap(({ rules }) => rules).length).toBeGreaterThan(400);
    expect(new Set(READINGS.map(({ product }) => product.market))).toEqual(new Set(['EU', 'NI', 'GB']));
  });

  it('allow the deciding figure itself and nothing above it', () => {
    const figured = alone.filter(
      ({ isProhibited, isNotKnown, isCountedOtherwise, decides }) =>
        !isProhibited &&
        !isNotKnown &&
        !isCountedOtherwise &&
        decides !== undefined &&
        percentOf(decides) < 100,
    );
    expect(figured.length).toBeGreaterThan(150);
    for (const reading of figured) {
      const limit = percentOf(reading.decides ?? reading.rule);
      const isStrict = reading.decides?.strict === true;
      const found = [justBelow(limit), limit, justAbove(limit)].map((percent) => [
        worstOf(wordsOn(reading, percent)),
      ]);
      const expected = [['within'], [isStrict ? 'over' : 'within'], ['over']];
      expect([told(reading), limit, found]).toEqual([told(reading), limit, expected]);
    }
  });

  it('stop the least of what is prohibited, and none of it is within', () => {
    const prohibited = READINGS.filter(({ isProhibited }) => isProhibited);
    expect(prohibited.length).toBeGreaterThan(50);
    for (const reading of prohibited) {
      expect([told(reading), wordsOn(reading, LEAST)]).toEqual([
        told(reading),
        expect.arrayContaining(['prohibited']),
      ]);
      expect([told(reading), wordsOn(reading, 0).includes('prohibited')]).toEqual([told(reading), false]);
    }
  });

  it('never pass what is not known as within, nor as free', () => {
    const open = alone.filter(({ isNotKnown, isProhibited }) => isNotKnown && !isProhibited);
    expect(open.length).toBeGreaterThan(5);
    for (const reading of open) {
      for (const percent of [LEAST, 1, 100]) {
        const words = wordsOn(reading, percent);
        expect([told(reading), words]).toEqual([told(reading), expect.arrayContaining(['unknown'])]);
      }
    }
  });

  it('begin on their own day', () => {
    const dated = alone.filter(
      ({ rule, decides, isProhibited, isCountedOtherwise, isNotKnown }) =>
        rule.from !== undefined && !isProhibited && !isNotKnown && !isCountedOtherwise && decides === rule,
    );
    expect(dated.length).toBeGreaterThan(5);
    for (const reading of dated) {
      const above = justAbove(percentOf(reading.rule));
      const on = (date: string) => wordsOn({ ...reading, product: { ...reading.product, date } }, above);
      expect([told(reading), on(reading.rule.from ?? '').includes('over')]).toEqual([told(reading), true]);
    }
  });

  it('let nothing pass above a figure that counts something else', () => {
    const otherwise = alone.filter(({ isCountedOtherwise }) => isCountedOtherwise);
    expect(otherwise.length).toBeGreaterThan(10);
    for (const reading of otherwise) {
      const answer = must(
        limits.run({
          ...reading.product,
          contributions: [{ name: reading.row.name, percent: 100 }],
        }),
      );
      const words = answer.verdicts.filter(({ kind }) => kind === 'law').map(({ verdict }) => verdict);
      const isStopped = words.some((word) => word === 'over' || word === 'prohibited' || word === 'unknown');
      expect([told(reading), isStopped]).toEqual([told(reading), true]);
    }
  });
});
