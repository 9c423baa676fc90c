import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, HUNDRED, ZERO } from '../quantity/index.ts';

export interface IngredientLine {
  /** As it is to stand on the label. */
  readonly name: string;
  /** By mass at the time of addition. */
  readonly percent: ExactInput;
  readonly role?: 'colourant' | 'fragrance' | undefined;
}

/** From which share downward a market leaves the order free. */
export interface OrderRule {
  readonly thresholdPercent: number;
  readonly freeWhen: 'below' | 'at-most';
}

export interface OrderedIngredients {
  readonly list: readonly string[];
  /** The order is free from this index on, colourants last. */
  readonly anyOrderFrom: number;
}

interface Ingredient {
  readonly name: string;
  readonly percent: Exact;
  readonly isColourant: boolean;
}

const normalise = (name: string): string => name.trim().toLowerCase();

/** A name stands once, with all that it comes to; a colourant only where nothing else of the name is in it. */
function gatherByName(lines: readonly IngredientLine[]): Ingredient[] {
  const byName = new Map<string, Ingredient>();
  for (const { name, percent, role } of lines) {
    const known = byName.get(normalise(name));
    byName.set(normalise(name), {
      name: known?.name ?? name,
      percent: (known?.percent ?? ZERO).plus(percent),
      isColourant: role === 'colourant' && (known?.isColourant ?? true),
    });
  }
  return [...byName.values()];
}

function problemsOf(lines: readonly IngredientLine[], named: readonly string[]): Problem[] {
  const blank = (where: string, name: string) => (name.trim() === '' ? [problem('name-missing', where)] : []);
  return [
    ...(lines.length === 0 ? [problem('formula-without-lines', 'lines', { found: 0, allowed: 1 })] : []),
    ...lines.flatMap(({ name, percent }, index) => {
      const where = `lines[${index}].percent`;
      const found = exact(percent);
      const isPercent = found.gt(0) && found.lte(HUNDRED);
      return [
        ...blank(`lines[${index}].name`, name),
        ...(isPercent
          ? []
          : [problem('percent-out-of-range', where, { found: found.toFixed(), allowed: 100 })]),
      ];
    }),
    ...named.flatMap((name, index) => blank(`named[${index}]`, name)),
  ];
}

/**
 * A legal order of the list of ingredients: descending by mass; what lies below the market's threshold may follow in any
 * order (here: still descending); then the allergens that are to be named besides; colourants last.
 *
 * Source: Regulation (EC) No 1223/2009, Article 19(1)(g): below 1 % is free; 21 CFR 701.3(f): 1 % or less is free. The
 * rule itself comes in. A name that stands on several lines is added up and listed once.
 */
export function orderIngredients(
  lines: readonly IngredientLine[],
  named: readonly string[],
  rule: OrderRule,
): Result<OrderedIngredients> {
  const problems = problemsOf(lines, named);
  if (problems.length > 0) return refused(...problems);
  const ingredients = gatherByName(lines).sort((one, other) => other.percent.cmp(one.percent));
  const isFree = ({ percent }: Ingredient): boolean =>
    rule.freeWhen === 'below' ? percent.lt(rule.thresholdPercent) : percent.lte(rule.thresholdPercent);
  const others = ingredients.filter(({ isColourant }) => !isColourant);
  const listed = new Set(ingredients.map(({ name }) => normalise(name)));
  const besides: string[] = [];
  for (const name of named) {
    if (!listed.has(normalise(name))) besides.push(name);
    listed.add(normalise(name));
  }
  const ordered = others.filter((ingredient) => !isFree(ingredient));
  const list = [
    ...ordered.map(({ name }) => name),
    ...others.filter(isFree).map(({ name }) => name),
    ...besides,
    ...ingredients.filter(({ isColourant }) => isColourant).map(({ name }) => name),
  ];
  return done({ list, anyOrderFrom: ordered.length });
}
