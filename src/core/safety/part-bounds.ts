import { type Fraction, fractionOf, NOUGHT } from '../linear/index.ts';
import type { ExactInput, Quotient } from '../quantity/index.ts';
import { type Composition, composeContributions, type Member } from './compose.ts';
import { judgeIfra } from './judge-ifra.ts';
import { judgeMarket, type LimitsContext } from './judge-limits.ts';
import type { LimitVerdict } from './limit-verdict.ts';
import { type LimitBound, listBounds } from './list-bounds.ts';
import { exactFraction } from './percent-sum.ts';
import type { SafetyTables } from './safety-tables.ts';
import type { ScentBound } from './scent-program.ts';
import type { Provenance, Substance } from './substance.ts';

/** What a part of a product brings in, in percent by mass of that part: the most that it may. */
export type PartContents = readonly (Substance & Provenance & { readonly percent: ExactInput | Quotient })[];

/** What the parts meet in the tables: bounds on how much of each there is, and what no table tells. */
export interface PartRules {
  readonly bounds: readonly ScentBound[];
  readonly unknown: readonly LimitVerdict[];
}

type OfPart = PartContents[number] & { readonly part: number };

const isOfPart = (one: Member['of']): one is OfPart => 'part' in one;

/** Everything that the parts bring in, each of it still of its part. */
export function composeParts(tables: SafetyTables, parts: readonly PartContents[]): Composition {
  const contents = parts.flatMap((part, index): OfPart[] => part.map((one) => ({ ...one, part: index })));
  return composeContributions(tables, contents, ({ percent }) => percent);
}

/** Looked up once for all amounts: which rules speak of the parts does not hang on how much of each there is. */
export function readPartRules(
  tables: SafetyTables,
  context: LimitsContext,
  parts: readonly PartContents[],
): PartRules {
  const composition = composeParts(tables, parts);
  const { verdicts } = judgeMarket(tables, context, composition, judgeIfra(context, composition));
  return {
    bounds: boundsOnParts(tables, context, composition, parts.length),
    // A figure that counts something else than is put in is kept as if it counted all of it: the stricter reading.
    unknown: verdicts.filter(({ verdict, reason }) => verdict === 'unknown' && reason !== 'counted-as-other'),
  };
}

/** Every known limit on what the parts bring in; none where nothing of it is in any part. */
export const boundsOnParts = (
  tables: SafetyTables,
  context: LimitsContext,
  composition: Composition,
  count: number,
): ScentBound[] => listBounds(tables, context, composition).flatMap((bound) => boundOnParts(bound, count));

function boundOnParts({ name, told, terms, most }: LimitBound, count: number): ScentBound[] {
  const weights = weightsOfParts(terms, count);
  return weights.every((weight) => weight.sign === 0)
    ? []
    : [{ name, told, weights, most: fractionOf(most) }];
}

/** By part, how much of each percent of it counts. */
export function weightsOfParts(terms: LimitBound['terms'], count: number): Fraction[] {
  const weights: Fraction[] = Array.from({ length: count }, () => NOUGHT);
  for (const { member, dividedBy = 1 } of terms) {
    if (!isOfPart(member.of)) throw new Error('everything in a composition of parts is of a part');
    const { part, percent } = member.of;
    const share = exactFraction(percent).over(fractionOf(dividedBy)).over(HUNDRED_PERCENT);
    weights[part] = (weights[part] ?? NOUGHT).plus(share);
  }
  return weights;
}

const HUNDRED_PERCENT = fractionOf(100);

/**
 * The last part is the rest of the product, which fills it up to a hundred: sum of w_i x_i + w_r (100 - sum of x_i) <= most
 * is sum of (w_i - w_r) x_i <= most - 100 w_r.
 */
export function boundBesideRest(bound: ScentBound): ScentBound {
  const rest = bound.weights.at(-1) ?? NOUGHT;
  return {
    ...bound,
    weights: bound.weights.slice(0, -1).map((weight) => weight.minus(rest)),
    most: bound.most.minus(rest.times(HUNDRED_PERCENT)),
  };
}
