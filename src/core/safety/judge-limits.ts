import type { LimitContext } from './choose-rules.ts';
import { type Composition, composeContributions, percentOfContribution } from './compose.ts';
import { type IfraAnswer, judgeIfra } from './judge-ifra.ts';
import { judgeLaw } from './judge-law.ts';
import { judgeLawNotInTables } from './judge-law-not-in-tables.ts';
import { type FunctionTold, judgePositiveLists } from './judge-positive-lists.ts';
import { type LimitVerdict, tellVerdict } from './limit-verdict.ts';
import type { SafetyTables } from './safety-tables.ts';
import type { Contribution } from './substance.ts';

export interface LimitsContext extends Omit<LimitContext, 'hasNitrosatingAgent'> {
  /** Materials that are in it as something which only listed substances may be. */
  readonly functions?: readonly FunctionTold[];
}

export interface LimitsInput extends LimitsContext {
  readonly contributions: readonly Contribution[];
}

export interface LimitsAnswer {
  readonly verdicts: readonly LimitVerdict[];
  /** The tightest rule that was compared: a prohibition, else the largest share of a limit. */
  readonly decidedBy: string | null;
  /** Phototoxic oils: 1 is the limit. */
  readonly sumOfShares?: number;
}

/** Materials that bring nitrite or release it (common practice, no source). */
const NITROSATING = /nitrite|bronopol|2-bromo-2-nitropropane|5-bromo-5-nitro|bronidox/i;

/** Substances that no rule spoke of: listed, not blocking. */
function listUnruled({ named }: Composition, ruled: readonly LimitVerdict[]): LimitVerdict[] {
  const spokenOf = new Set<string>();
  for (const { members } of ruled) for (const name of members) spokenOf.add(name);
  return named
    .filter(({ row }) => !spokenOf.has(row))
    .map(({ told }) => tellVerdict(told, { verdict: 'no-rule' }));
}

const RANK: Readonly<Record<string, number>> = { prohibited: 2, over: 1, within: 0 };

/** Prohibited before over before within; then by the share of the limit. Nothing else was compared. */
function weightOf({ verdict, percent, limitPercent }: LimitVerdict): readonly [number, number] | undefined {
  const rank = RANK[verdict];
  if (rank === undefined || (rank < 2 && limitPercent === undefined)) return undefined;
  return [rank, percent / (limitPercent ?? 1)];
}

function tightestVerdict(verdicts: readonly LimitVerdict[]): LimitVerdict | undefined {
  let tightest: LimitVerdict | undefined;
  let most: readonly [number, number] = [-1, 0];
  for (const verdict of verdicts) {
    const weight = weightOf(verdict);
    if (weight === undefined || weight[0] < most[0] || (weight[0] === most[0] && weight[1] <= most[1]))
      continue;
    tightest = verdict;
    most = weight;
  }
  return tightest;
}

/** The tightest rule that was compared, as it is told. */
export function tellDecidedBy(verdicts: readonly LimitVerdict[]): string | null {
  const tightest = tightestVerdict(verdicts);
  return tightest === undefined ? null : `${tightest.name} (${tightest.kind}): ${tightest.source}`;
}

/** What of the composition itself rules of law ask for. */
export const lawContextOf = (context: LimitsContext, { named }: Composition): LimitContext =>
  Object.assign({}, context, { hasNitrosatingAgent: named.some(({ row }) => NITROSATING.test(row)) });

export function judgeMarket(
  tables: SafetyTables,
  context: LimitsContext,
  composition: Composition,
  ifra: IfraAnswer,
): LimitsAnswer {
  const lawContext = lawContextOf(context, composition);
  const ruled = [
    ...judgeLawNotInTables(tables, context.market, composition),
    ...judgePositiveLists(tables, context.market, composition, context.functions),
    ...judgeLaw(tables, lawContext, composition),
    ...ifra.verdicts,
  ];
  return {
    verdicts: [...ruled, ...listUnruled(composition, ruled)],
    decidedBy: tellDecidedBy(ruled),
    ...(ifra.sumOfShares !== undefined && { sumOfShares: ifra.sumOfShares }),
  };
}

/** Judges contents in percent by mass of the finished product against law and IFRA Standards. Expands nothing. */
export function judgeLimits(tables: SafetyTables, { contributions, ...context }: LimitsInput): LimitsAnswer {
  const composition = composeContributions(tables, contributions, percentOfContribution);
  return judgeMarket(tables, context, composition, judgeIfra(context, composition));
}
