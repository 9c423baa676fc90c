import { type Fraction, fractionOf, NOUGHT, UNIT } from '../linear/index.ts';
import { done, type Result } from '../problem.ts';
import type { ExactInput } from '../quantity/index.ts';
import { answerScent, type NearestWish, type ScentAnswer } from './answer-scent.ts';
import type { LimitsContext } from './judge-limits.ts';
import { OWN_MOST } from './largest-scent.ts';
import type { LimitVerdict } from './limit-verdict.ts';
import { boundBesideRest, type PartContents, readPartRules } from './part-bounds.ts';
import { readShares, type Share } from './read-blend.ts';
import type { SafetyTables } from './safety-tables.ts';
import { type ScentBound, shrink } from './scent-program.ts';

/** A market and a use that the product is judged for, and how they are called. */
export interface JudgedPlace {
  readonly context: LimitsContext;
  readonly about: string;
}

export interface ScentInProduct {
  readonly places: readonly JudgedPlace[];
  /** What each oil brings in, and last what the rest of the product does, which fills it up to a hundred. */
  readonly parts: readonly PartContents[];
  /** By oil. */
  readonly shares: readonly Share[];
  /** Limits that no table holds; weights by part, the rest too, as fractions. */
  readonly ownBounds: readonly ScentBound[];
  readonly mostPercent?: ExactInput | undefined;
  readonly marginFraction?: ExactInput | undefined;
  readonly errors?: WeighingErrors | undefined;
  readonly nearest?: NearestWish | undefined;
}

/** How far off the weighing may be, at the worst. */
export interface WeighingErrors {
  /** By oil: as much more of it may come in, in percent of the product. */
  readonly morePercent: readonly ExactInput[];
  /** By so much of itself the whole may fall short. */
  readonly lessFraction: ExactInput;
}

/**
 * The largest scent of a formula: as findLargestScent, for every market and use at once, with what the rest of the
 * formula holds counted too, and so that the worst weighing stays within: sum of w_i (x_i + e_i) <= limit (1 - f), where e_i
 * is the error of an addition in percent of the batch and f the error of the whole over the batch.
 */
export function findScentInProduct(tables: SafetyTables, asked: ScentInProduct): Result<ScentAnswer> {
  const ranges = readShares(asked.shares);
  if (!ranges.ok) return ranges;
  const rules = asked.places.map(({ context, about }) => ({
    about,
    ...readPartRules(tables, context, asked.parts),
  }));
  const published = mergeBounds(
    rules.flatMap(({ bounds, about }) => bounds.map((bound) => ({ ...bound, about: [about] }))),
  );
  const bounds = [...published, ...asked.ownBounds, ...ownMost(asked)]
    .map((bound) => shrink(bound, asked.marginFraction ?? 0))
    .map((bound) => (asked.errors ? leaveRoom(bound, asked.errors) : bound))
    .map(boundBesideRest)
    // What no oil has less or more of than the rest hangs on nothing here.
    .filter(({ weights, most }) => most.sign < 0 || weights.some((weight) => weight.sign !== 0));
  const answer = answerScent({ ranges: ranges.value, bounds }, asked.nearest);
  return done({ ...answer, unknown: mergeUnknown(rules.flatMap(({ unknown }) => unknown)) });
}

const ownMost = ({ mostPercent, shares }: ScentInProduct): ScentBound[] =>
  mostPercent === undefined
    ? []
    : [
        {
          name: OWN_MOST,
          told: { kind: 'assessor' },
          weights: [...shares.map(() => UNIT), NOUGHT],
          most: fractionOf(mostPercent),
        },
      ];

const keyOf = ({ name, told, most, weights }: ScentBound): string =>
  [name, told.kind, told.ruleId, textOf(most), ...weights.map(textOf)].join('|');
const textOf = ({ numerator, denominator }: Fraction): string => `${numerator}/${denominator}`;

/** One limit that holds in several places stands once. */
function mergeBounds(bounds: readonly ScentBound[]): ScentBound[] {
  const merged = new Map<string, ScentBound>();
  for (const bound of bounds) {
    const known = merged.get(keyOf(bound));
    const about = [...new Set([...(known?.about ?? []), ...(bound.about ?? [])])];
    merged.set(keyOf(bound), { ...bound, about });
  }
  return [...merged.values()];
}

const mergeUnknown = (unknown: readonly LimitVerdict[]): LimitVerdict[] => [
  ...new Map(unknown.map((each) => [`${each.name}|${each.kind}|${each.reason}`, each])).values(),
];

function leaveRoom(bound: ScentBound, { morePercent, lessFraction }: WeighingErrors): ScentBound {
  const more = morePercent.reduce<Fraction>(
    (sum, error, index) => sum.plus((bound.weights[index] ?? NOUGHT).times(fractionOf(error))),
    NOUGHT,
  );
  const most = bound.most.times(UNIT.minus(fractionOf(lessFraction))).minus(more);
  return { ...bound, most };
}
