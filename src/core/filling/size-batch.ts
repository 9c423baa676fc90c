import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact, ONE, roundToStep, sumOf, ZERO } from '../quantity/index.ts';
import { type BatchLimit, isMassLimit, type NamedLimit, NO_LIMIT, nameOf } from './batch-limit.ts';

export interface TinLine {
  readonly key: string;
  readonly wanted: number;
  readonly aimGrams: ExactInput;
}

export interface BatchWish {
  /** The more urgent first: what runs short runs short for the later ones. */
  readonly lines: readonly TinLine[];
  /** Share of the batch that stays in bowl and spoon. */
  readonly bowlLossFraction: ExactInput;
  readonly retainedGrams: ExactInput;
  readonly limits: readonly BatchLimit[];
  /** The batch is taken up to a whole multiple of this; a millionth of a gram, the ledger's unit, unless given. */
  readonly stepGrams?: ExactInput;
}

export interface SizedBatch {
  readonly lines: readonly { readonly key: string; readonly wanted: number; readonly possible: number }[];
  readonly tinsGrams: Exact;
  readonly retainedGrams: Exact;
  readonly lossGrams: Exact;
  readonly batchGrams: Exact;
  readonly limitedBy: NamedLimit;
  /** Every limit that would by itself allow fewer than wanted, the tightest first. */
  readonly bounds: readonly (NamedLimit & { readonly units: number })[];
}

const LEDGER_STEP_GRAMS = 0.000001;

/**
 * Sizes a batch from tins, in grams, within what is there.
 *
 * Equation: batch = (sum of units x aim + retained sample) / (1 - bowl loss), taken up to the next step. Where a limit
 * is in the way, the greatest number of tins that keeps every limit, line by line. Exact: a material that just
 * suffices suffices. Common practice, no source.
 */
export function sizeBatch(wish: BatchWish): Result<SizedBatch> {
  const problems = problemsOf(wish);
  if (problems.length > 0) return refused(...problems);
  const wanted = wish.lines.map((line) => line.wanted);
  const wantedUnits = countAll(wanted);
  const bounds = wish.limits
    .map((limit) => ({ ...nameOf(limit), units: countAll(fillLines(wish, [limit])) }))
    .filter(({ units }) => units < wantedUnits)
    .sort((one, other) => one.units - other.units);
  const units = bounds.length === 0 ? wanted : fillLines(wish, wish.limits);
  const tightest = bounds[0];
  return done({
    ...massesOf(wish, units),
    lines: wish.lines.map(({ key, wanted }, index) => ({ key, wanted, possible: units[index] ?? 0 })),
    limitedBy: tightest ? { kind: tightest.kind, key: tightest.key, name: tightest.name } : NO_LIMIT,
    bounds,
  });
}

const countAll = (units: readonly number[]): number => units.reduce((sum, count) => sum + count, 0);

function massesOf(
  { lines, bowlLossFraction, retainedGrams, stepGrams }: BatchWish,
  units: readonly number[],
) {
  if (countAll(units) === 0) {
    return { tinsGrams: ZERO, retainedGrams: ZERO, lossGrams: ZERO, batchGrams: ZERO };
  }
  const tinsGrams = sumOf(lines.map(({ aimGrams }, index) => exact(aimGrams).times(units[index] ?? 0)));
  const kept = tinsGrams.plus(retainedGrams);
  const batchGrams = roundToStep(kept.div(ONE.minus(bowlLossFraction)), stepGrams ?? LEDGER_STEP_GRAMS, 'up');
  return { tinsGrams, retainedGrams: exact(retainedGrams), lossGrams: batchGrams.minus(kept), batchGrams };
}

function keeps(limit: BatchLimit, wish: BatchWish, units: readonly number[]): boolean {
  if (isMassLimit(limit)) {
    return massesOf(wish, units).batchGrams.times(limit.shareOfBatch).lte(limit.availableGrams);
  }
  const pieces = wish.lines.map(({ key }, index) => (limit.perUnit[key] ?? 0) * (units[index] ?? 0));
  return countAll(pieces) <= limit.availablePieces;
}

/** Line by line as many as the limits let through; each number found by halving. */
function fillLines(wish: BatchWish, limits: readonly BatchLimit[]): number[] {
  const units = wish.lines.map(() => 0);
  for (const [index, line] of wish.lines.entries()) {
    let most = 0;
    let tooMany = line.wanted + 1;
    while (tooMany - most > 1) {
      const middle = Math.floor((most + tooMany) / 2);
      units[index] = middle;
      if (limits.every((limit) => keeps(limit, wish, units))) most = middle;
      else tooMany = middle;
    }
    units[index] = most;
  }
  return units;
}

export interface PlainWish {
  readonly wantedGrams: ExactInput;
  readonly limits: readonly BatchLimit[];
  readonly stepGrams?: ExactInput;
}

/** The greatest batch, in grams, up to the wanted mass that keeps every limit of mass; taken down to a whole step. */
export function limitBatchGrams({ wantedGrams, limits, stepGrams }: PlainWish): Result<{
  readonly batchGrams: Exact;
  readonly limitedBy: NamedLimit;
}> {
  const problems = [...mustLieAbove(wantedGrams, 'wantedGrams'), ...limits.flatMap(problemsOfLimit)];
  if (problems.length > 0) return refused(...problems);
  let best = { batchGrams: exact(wantedGrams), limitedBy: NO_LIMIT };
  for (const limit of limits.filter(isMassLimit)) {
    if (best.batchGrams.times(limit.shareOfBatch).lte(limit.availableGrams)) continue;
    const most = exact(limit.availableGrams).div(limit.shareOfBatch);
    const batchGrams = roundToStep(most, stepGrams ?? LEDGER_STEP_GRAMS, 'down');
    best = { batchGrams, limitedBy: nameOf(limit) };
  }
  return done(best);
}

const mustLieAbove = (value: ExactInput, where: string): Problem[] =>
  exact(value).gt(0)
    ? []
    : [problem('value-not-above', where, { found: exact(value).toFixed(), allowed: 0 })];

function mustBeShare(value: ExactInput, where: string, least: 'from-0' | 'above-0'): Problem[] {
  const share = exact(value);
  const isInside = least === 'from-0' ? share.gte(0) && share.lt(1) : share.gt(0) && share.lte(1);
  return isInside
    ? []
    : [
        problem('share-out-of-range', where, {
          found: share.toFixed(),
          allowed: least === 'from-0' ? '0 to below 1' : 'above 0 to 1',
        }),
      ];
}

function problemsOf({ lines, bowlLossFraction, retainedGrams, limits }: BatchWish): Problem[] {
  const problems = [...mustBeShare(bowlLossFraction, 'bowlLossFraction', 'from-0')];
  if (lines.length === 0) problems.push(problem('no-tins-wanted', 'lines'));
  if (exact(retainedGrams).lt(0)) {
    problems.push(problem('mass-negative', 'retainedGrams', { found: exact(retainedGrams).toFixed() }));
  }
  for (const [index, { wanted, aimGrams }] of lines.entries()) {
    problems.push(...mustLieAbove(aimGrams, `lines[${index}].aimGrams`));
    if (!Number.isInteger(wanted) || wanted < 1) {
      problems.push(problem('wanted-not-whole', `lines[${index}].wanted`, { found: wanted, allowed: 1 }));
    }
  }
  return [...problems, ...limits.flatMap(problemsOfLimit)];
}

function problemsOfLimit(limit: BatchLimit): Problem[] {
  if (!isMassLimit(limit)) return [];
  const problems = mustBeShare(limit.shareOfBatch, limit.name, 'above-0');
  const available = exact(limit.availableGrams);
  return available.lt(0)
    ? [...problems, problem('mass-negative', limit.name, { found: available.toFixed() })]
    : problems;
}
