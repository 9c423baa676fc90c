import { done, type Problem, problem, type Result, refused } from '../../../core/problem.ts';
import {
  type Exact,
  exact,
  HUNDRED,
  readDecimal,
  sumOf,
  toText,
  ZERO,
} from '../../../core/quantity/index.ts';
import type { OilDraft, ScentDraft } from './scent-draft.ts';

export interface ReadScent {
  /** Of which lines, and how much of the scent each may be: a part, or a range of fractions. */
  readonly oils: readonly { readonly line: number; readonly share: string | readonly [string, string] }[];
  readonly mostPercent: string | undefined;
  readonly batchGrams: string | undefined;
}

/** What is typed on the scent page, each figure judged at its own field; what cannot be used is never taken as nothing. */
export function readScent({ oils, isFree, mostPercent, batchGrams }: ScentDraft): Result<ReadScent> {
  const ticked = oils.flatMap((oil, line) => (oil.isScent ? [{ oil, line }] : []));
  const read = (isFree ? readRanges : readParts)(ticked);
  const most = readOptional(mostPercent, 'mostPercent', judgeOwnMost);
  const batch = readOptional(batchGrams, 'batchGrams', judgeBatch);
  if (!read.ok || !most.ok || !batch.ok)
    return refused(...[read, most, batch].flatMap((each) => (each.ok ? [] : each.problems)));
  return done({ oils: read.value, mostPercent: most.value, batchGrams: batch.value });
}

interface Ticked {
  readonly oil: OilDraft;
  readonly line: number;
}
type Judge = (value: Exact, where: string) => Problem | undefined;

const judgeOwnMost: Judge = (value, where) => {
  if (value.lte(0)) return problem('value-not-above', where, { found: toText(value), allowed: 0 });
  return judgePercent(value, where);
};
const judgePercent: Judge = (value, where) =>
  value.lt(0) || value.gt(HUNDRED)
    ? problem('percent-out-of-range', where, { found: toText(value), allowed: '0 to 100' })
    : undefined;
const judgeBatch: Judge = (value, where) => {
  if (value.lt(0)) return problem('mass-negative', where, { found: toText(value) });
  return value.isZero() ? problem('mass-zero', where) : undefined;
};
const judgePart: Judge = (value, where) =>
  value.lt(0) ? problem('share-negative', where, { found: toText(value), allowed: 0 }) : undefined;

function readJudged(typed: string, where: string, judge: Judge): Result<Exact> {
  const read = readDecimal(typed, where);
  if (!read.ok) return read;
  const found = judge(read.value, where);
  return found ? refused(found) : read;
}

function readOptional(typed: string, where: string, judge: Judge): Result<string | undefined> {
  if (typed.trim() === '') return done(undefined);
  const read = readJudged(typed, where, judge);
  return read.ok ? done(toText(read.value)) : read;
}

function readParts(ticked: readonly Ticked[]): Result<ReadScent['oils']> {
  const read = ticked.map(({ oil, line }) => ({
    line,
    part: readJudged(oil.part, `oils[${line}].part`, judgePart),
  }));
  const problems = read.flatMap(({ part }) => (part.ok ? [] : part.problems));
  if (problems.length > 0) return refused(...problems);
  const oils = read.flatMap(({ line, part }) => (part.ok ? [{ line, share: toText(part.value) }] : []));
  const isNothing = oils.length > 0 && sumOf(oils.map(({ share }) => share)).isZero();
  return isNothing ? refused(problem('shares-all-nought', 'oils', { found: 0 })) : done(oils);
}

interface Range {
  readonly line: number;
  readonly least: Exact;
  readonly most: Exact;
}

/** Percents of the scent; empty: from none to all. */
function readRanges(ticked: readonly Ticked[]): Result<ReadScent['oils']> {
  const read = ticked.map(readRange);
  const problems = read.flatMap((range) => (range.ok ? [] : range.problems));
  if (problems.length > 0) return refused(...problems);
  const ranges = read.flatMap((range) => (range.ok ? [range.value] : []));
  const off = ranges.length === 0 ? undefined : judgeSums(ranges);
  if (off) return refused(off);
  return done(
    ranges.map(({ line, least, most }) => ({ line, share: [asFraction(least), asFraction(most)] })),
  );
}

function readRange({ oil, line }: Ticked): Result<Range> {
  const where = (end: string) => `oils[${line}].${end}`;
  const read = (typed: string, end: string, otherwise: Exact) =>
    typed.trim() === '' ? done(otherwise) : readJudged(typed, where(end), judgePercent);
  const least = read(oil.least, 'least', ZERO);
  const most = read(oil.most, 'most', HUNDRED);
  if (!least.ok || !most.ok)
    return refused(...[least, most].flatMap((each) => (each.ok ? [] : each.problems)));
  return least.value.gt(most.value)
    ? refused(
        problem('range-least-above-most', where('least'), {
          found: toText(least.value),
          allowed: toText(most.value),
        }),
      )
    : done({ line, least: least.value, most: most.value });
}

/** All at the least must leave room for a hundred, and all at the most must reach it. */
function judgeSums(ranges: readonly Range[]): Problem | undefined {
  const leasts = sumOf(ranges.map(({ least }) => least));
  const mosts = sumOf(ranges.map(({ most }) => most));
  if (leasts.gt(HUNDRED)) return problem('ranges-too-much', 'oils', { found: toText(leasts), allowed: 100 });
  return mosts.lt(HUNDRED)
    ? problem('ranges-too-little', 'oils', { found: toText(mosts), allowed: 100 })
    : undefined;
}

const asFraction = (percent: Exact): string => toText(exact(percent).div(HUNDRED));
