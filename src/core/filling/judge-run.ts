import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, largest, ZERO } from '../quantity/index.ts';
import type { FillBasis } from './judge-fill.ts';
import { countBelow, judgePacks, type PackRule } from './judge-packs.ts';
import type { PackTestTables } from './net-contents-tables.ts';
import { findSamplingPlan } from './sampling-plan.ts';
import { findTolerableError, type TolerableError } from './tolerable-error.ts';
import { spreadOf } from './weight-spread.ts';

export interface Run {
  readonly declaredGrams: ExactInput;
  readonly basis: FillBasis;
  readonly wanted: number;
  /** Net weights of all tins so far, struck ones left out. */
  readonly netGrams: readonly ExactInput[];
  readonly scaleErrorGrams: ExactInput;
  /** Where tins were weighed in several ways: the worst error of each net weight, in their order. */
  readonly errorsGrams?: readonly ExactInput[];
  /** When the run is closed, the batch is what was filled; before that, what is wanted. */
  readonly isOver?: boolean;
}

export interface RunVerdict {
  readonly filled: number;
  /** Tins that do not stay as they are: too light, and by the average way more of them than may lie below limit 1. */
  readonly tooLight: number;
  /** A tin that is too light is none yet. */
  readonly stillToFill: number;
  readonly totalGrams: Exact;
  readonly meanGrams: Exact | null;
  readonly standardDeviationGrams: Exact | null;
  /** Mean above the label; below nought where the mean lies under it. */
  readonly giveawayGrams: Exact | null;
  /** By the minimum way: net less the scale's error below the label. By the average way: net below the label. */
  readonly belowNominal: number;
  readonly belowLimit1: number;
  readonly belowLimit2: number;
  readonly verdict: 'accept' | 'reject' | 'none-yet';
  readonly decidedBy: PackRule | 'all-rules' | null;
  readonly broken: readonly PackRule[];
  /** By which way it was judged: `minimum` too where the size has no tolerable error. */
  readonly judgedBy: FillBasis;
  readonly limits: TolerableError | null;
  /** Whether the scale's error is at most a fifth of the tolerable error; null where there is none. */
  readonly isScaleFineEnough: boolean | null;
}

/**
 * Verdict of a filling run whose tins are all weighed, as it stands now.
 *
 * `minimum`: none, less the scale's worst error, below the label. `average`: packers' rules with every pack weighed
 * (batch-weight-test): the share below limit 1 counts against the whole run, the mean against the tins so far.
 * Source: SI 2006/659; Directive 76/211/EEC; largest measuring error NI 2011/331 Schedule 2.
 */
export function judgeRun(run: Run, tables: PackTestTables): Result<RunVerdict> {
  const problems = problemsOf(run);
  if (problems.length > 0) return refused(...problems);
  const { declaredGrams, netGrams, basis, wanted } = run;
  const found = findTolerableError(declaredGrams, 'up-0.1', tables, 'declaredGrams');
  const limits = found.ok ? found.value : null;
  const tooLight = countTooLight(run, basis === 'average' ? limits : null, tables);
  const counts = {
    filled: netGrams.length,
    tooLight,
    stillToFill: run.isOver ? 0 : Math.max(0, wanted - netGrams.length + tooLight),
    belowLimit1: limits ? countBelow(netGrams, limits.limit1) : 0,
    belowLimit2: limits ? countBelow(netGrams, limits.limit2) : 0,
    judgedBy: limits === null ? ('minimum' as const) : basis,
    limits,
    isScaleFineEnough: limits && largest(exact(0), ...errorsOf(run)).lte(limits.largestMeasuringError),
  };
  if (netGrams.length === 0) return done({ ...counts, ...NOTHING_YET });
  return done({ ...counts, ...judgeTins(run, limits, tables) });
}

const NOTHING_YET = {
  totalGrams: ZERO,
  meanGrams: null,
  standardDeviationGrams: null,
  giveawayGrams: null,
  belowNominal: 0,
  verdict: 'none-yet',
  decidedBy: null,
  broken: [],
} as const;

function judgeTins(run: Run, limits: TolerableError | null, tables: PackTestTables) {
  const { declaredGrams, netGrams, basis } = run;
  const isAverage = basis === 'average' && limits !== null;
  const judged = judgePacks(isAverage ? netGrams : surelyOf(run), {
    nominal: exact(declaredGrams),
    average: isAverage ? { ...limits, mayLieBelowLimit1: mayLieBelow(run, tables), meanFactor: ZERO } : null,
  });
  const { mean, total, standardDeviation } = spreadOf(netGrams);
  return {
    totalGrams: total,
    meanGrams: mean,
    standardDeviationGrams: standardDeviation,
    giveawayGrams: mean.minus(declaredGrams),
    belowNominal: judged.belowNominal,
    verdict: judged.verdict,
    broken: judged.broken,
    decidedBy: judged.broken[0] ?? (isAverage ? ('all-rules' as const) : ('below-nominal' as const)),
  };
}

const errorsOf = ({ netGrams, scaleErrorGrams, errorsGrams }: Run): Exact[] =>
  netGrams.length === 0
    ? [exact(scaleErrorGrams)]
    : netGrams.map((_, index) => exact(errorsGrams?.[index] ?? scaleErrorGrams));

/** As much is in each tin for sure. */
function surelyOf(run: Run): Exact[] {
  const errors = errorsOf(run);
  return run.netGrams.map((net, index) => exact(net).minus(errors[index] ?? run.scaleErrorGrams));
}

/** Each net weight less the scale's error against the label or, by the average way, against the limits. */
function countTooLight(run: Run, limits: TolerableError | null, tables: PackTestTables): number {
  const { declaredGrams, netGrams } = run;
  const light = countBelow(surelyOf(run), limits ? limits.limit1 : exact(declaredGrams));
  if (limits === null) return light;
  const inadequate = countBelow(netGrams, limits.limit2);
  return inadequate + Math.max(0, light - inadequate - mayLieBelow(run, tables));
}

/** Below 100 tins the reference test's share, from 100 on the working figure of packers' second rule. */
function mayLieBelow({ netGrams, wanted, isOver }: Run, tables: PackTestTables): number {
  const size = isOver ? netGrams.length : Math.max(wanted, netGrams.length);
  const plan = findSamplingPlan(size, 'gb-single', tables.countTests);
  if (plan.ok && plan.value.scheme === 'all-weighed') return plan.value.first.acceptAtMost;
  return exact(size).times(tables.mayLieBelowLimit1Fraction).floor().toNumber();
}

function problemsOf({ declaredGrams, netGrams, scaleErrorGrams, wanted }: Run): Problem[] {
  const problems: Problem[] = [];
  const mustLieAbove = (value: ExactInput, where: string): void => {
    if (!exact(value).gt(0)) {
      problems.push(problem('value-not-above', where, { found: exact(value).toFixed(), allowed: 0 }));
    }
  };
  mustLieAbove(declaredGrams, 'declaredGrams');
  for (const [index, net] of netGrams.entries()) mustLieAbove(net, `netGrams[${index}]`);
  if (exact(scaleErrorGrams).lt(0)) {
    problems.push(problem('mass-negative', 'scaleErrorGrams', { found: exact(scaleErrorGrams).toFixed() }));
  }
  if (!Number.isInteger(wanted) || wanted < 1) {
    problems.push(problem('wanted-not-whole', 'wanted', { found: wanted, allowed: 1 }));
  }
  return problems;
}
