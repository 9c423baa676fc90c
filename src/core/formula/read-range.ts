import { done, problem, type Result, refused } from '../problem.ts';
import { exact, readDecimal } from '../quantity/index.ts';

/** How much of a constituent a material holds, in percent by mass of the material. */
export interface ConstituentRange {
  readonly name: string;
  readonly leastPercent: number | string;
  readonly typicalPercent: number | string;
  readonly mostPercent: number | string;
}

/** In whole parts, PARTS_PER_PERCENT to the percent. */
export interface PartsRange {
  readonly least: bigint;
  readonly typical: bigint;
  readonly most: bigint;
}

/** A part is a tenth of one in a thousand million: finer than any supplier's paper. */
const PLACES = 8;
export const PARTS_PER_PERCENT = 10n ** BigInt(PLACES);
const PERCENT_TEXT = /^(\d{1,3})(?:\.(\d{1,8}))?$/;

/** undefined: not a percentage between 0 and 100 with at most eight places. */
function readParts(percent: number | string): bigint | undefined {
  const match = PERCENT_TEXT.exec(String(percent)) ?? PERCENT_TEXT.exec(plainText(percent));
  if (match === null) return undefined;
  const parts = BigInt((match[1] ?? '') + (match[2] ?? '').padEnd(PLACES, '0'));
  return parts <= 100n * PARTS_PER_PERCENT ? parts : undefined;
}

/** The other ways to write one: small numbers print as 1e-7, and people type .5 or 5. */
function plainText(percent: number | string): string {
  if (typeof percent === 'number') return exact(percent).toFixed();
  const read = readDecimal(percent, 'percent');
  return read.ok ? read.value.toFixed() : '';
}

function readFresh(range: ConstituentRange): Result<PartsRange> {
  const least = readParts(range.leastPercent);
  const typical = readParts(range.typicalPercent);
  const most = readParts(range.mostPercent);
  const isRead = least !== undefined && typical !== undefined && most !== undefined;
  if (isRead && least <= typical && typical <= most) return done({ least, typical, most });
  return refused(
    problem(isRead ? 'constituent-range-disordered' : 'constituent-not-a-percent', range.name, {
      found: `${range.leastPercent}, ${range.typicalPercent}, ${range.mostPercent}`,
      allowed: 100,
      parameters: { constituent: range.name },
    }),
  );
}

/** Remembered for as long as the row itself lives: a formula is checked again with every gram that is typed. */
const remembered = new WeakMap<ConstituentRange, Result<PartsRange>>();

/** Reads least, typical and most; refuses what is no percentage, and a range out of order. */
export function readRange(range: ConstituentRange): Result<PartsRange> {
  const known = remembered.get(range);
  if (known) return known;
  const read = readFresh(range);
  remembered.set(range, read);
  return read;
}
