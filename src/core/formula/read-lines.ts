import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { MICROGRAMS_PER_GRAM, microgramsFromGrams, readDecimal } from '../quantity/index.ts';
import type { FormulaLine } from './formula-line.ts';

/** A tonne: nothing that two people weigh by hand comes near it (common practice, no source). */
const LARGEST_GRAMS = 1_000_000;

/** Lines whose grams were read, as whole micrograms. */
export interface WeighedLines {
  readonly micrograms: readonly bigint[];
  readonly total: bigint;
}

/** What nearly every line is: read without a detour, since a formula is checked with every gram that is typed. */
const PLAIN_GRAMS = /^(\d{1,6})(?:\.(\d{1,6}))?$/;

function readPlainMicrograms(grams: string): bigint {
  const match = PLAIN_GRAMS.exec(grams);
  return match === null ? 0n : BigInt((match[1] ?? '') + (match[2] ?? '').padEnd(6, '0'));
}

function readGrams({ grams }: FormulaLine, where: string): Result<bigint> {
  const plain = readPlainMicrograms(grams);
  if (plain > 0n) return done(plain);
  const read = readDecimal(grams, where);
  if (!read.ok) return read;
  const found = grams.trim();
  if (read.value.isZero()) return refused(problem('mass-zero', where, { found, allowed: 'above 0' }));
  if (read.value.lt(0)) return refused(problem('mass-negative', where, { found, allowed: 'above 0' }));
  if (read.value.gt(LARGEST_GRAMS)) {
    return refused(problem('mass-absurd', where, { found, allowed: LARGEST_GRAMS }));
  }
  const micrograms = microgramsFromGrams(read.value, where);
  return micrograms.ok ? done(BigInt(micrograms.value)) : micrograms;
}

/** Reads the grams of every line and names each line that cannot stand. */
export function readLines(lines: readonly FormulaLine[]): Result<WeighedLines> {
  if (lines.length === 0) return refused(problem('formula-without-lines', 'lines', { found: 0, allowed: 1 }));
  const problems: Problem[] = [];
  const micrograms: bigint[] = [];
  for (const [index, line] of lines.entries()) {
    const read = readGrams(line, `lines[${index}].grams`);
    if (read.ok) micrograms.push(read.value);
    else problems.push(...read.problems);
  }
  if (problems.length > 0) return refused(...problems);
  const total = micrograms.reduce((sum, each) => sum + each, 0n);
  if (total > BigInt(LARGEST_GRAMS) * BigInt(MICROGRAMS_PER_GRAM)) {
    const found = Number(total / BigInt(MICROGRAMS_PER_GRAM));
    return refused(problem('mass-absurd', 'lines', { found, allowed: LARGEST_GRAMS }));
  }
  return done({ micrograms, total });
}
