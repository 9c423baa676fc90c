import { type Fraction, fractionOf, NOUGHT } from '../linear/index.ts';
import { exact } from '../quantity/index.ts';
import { type Composition, composeContributions, type Member } from './compose.ts';
import { judgeIfra } from './judge-ifra.ts';
import { judgeMarket, type LimitsContext } from './judge-limits.ts';
import type { LimitVerdict } from './limit-verdict.ts';
import { type LimitBound, listBounds } from './list-bounds.ts';
import { toExactPercent } from './percent-sum.ts';
import type { BlendOil } from './read-blend.ts';
import type { SafetyTables } from './safety-tables.ts';
import type { ScentBound } from './scent-program.ts';
import type { Contribution } from './substance.ts';

/** What a blend meets in the tables: bounds on its oils, and what no table tells. */
export interface BlendRules {
  readonly bounds: readonly ScentBound[];
  readonly unknown: readonly LimitVerdict[];
}

/** A substance as one percent of its oil brings it in. */
interface OfOil extends Contribution {
  readonly oil: number;
}

/** Content of a natural material is natural, unless something else is told. */
const contributionsOf = ({ share: _share, constituents, ...oil }: BlendOil, index: number): OfOil[] => [
  { ...oil, oil: index, percent: 1 },
  ...constituents.map((one) => ({
    ...one,
    origin: one.origin ?? 'natural',
    oil: index,
    percent: exact(one.percent).div(100),
  })),
];

const isOfOil = (one: Member['of']): one is OfOil => 'oil' in one;

/** Looked up once for all amounts: which rules speak of the blend does not hang on how much of it there is. */
export function readRules(
  tables: SafetyTables,
  context: LimitsContext,
  blend: readonly BlendOil[],
): BlendRules {
  const contributions = blend.flatMap(contributionsOf);
  const composition = composeContributions(tables, contributions, ({ percent }) => percent);
  return {
    bounds: listBounds(tables, context, composition).flatMap((bound) => scentBound(bound, blend.length)),
    unknown: listUnknown(tables, context, composition),
  };
}

/** None where nothing of it is in any oil. */
function scentBound({ name, told, terms, most }: LimitBound, oils: number): ScentBound[] {
  const weights: Fraction[] = Array.from({ length: oils }, () => NOUGHT);
  for (const { member, dividedBy = 1 } of terms) {
    if (!isOfOil(member.of)) throw new Error('every contribution of a blend is of an oil');
    const share = fractionOf(toExactPercent(member.percent)).over(fractionOf(dividedBy));
    weights[member.of.oil] = (weights[member.of.oil] ?? NOUGHT).plus(share);
  }
  return weights.every((weight) => weight.sign === 0)
    ? []
    : [{ name, told, weights, most: fractionOf(most) }];
}

/** A figure that counts something else than what is put in is kept here as if it counted all of it: the stricter reading. */
const listUnknown = (
  tables: SafetyTables,
  context: LimitsContext,
  composition: Composition,
): LimitVerdict[] =>
  judgeMarket(tables, context, composition, judgeIfra(context, composition)).verdicts.filter(
    ({ verdict, reason }) => verdict === 'unknown' && reason !== 'counted-as-other',
  );
