import { done, problem, type Result, refused } from '../problem.ts';
import { type Exact, exact } from './exact.ts';

const PLAIN = /^[+-]?(\d+(\.\d*)?|\.\d+)$/;
const WITH_COMMA = /^[+-]?\d+,\d+$/;

/**
 * Reads a number that a person typed: digits with a decimal point, spaces between thousands allowed.
 * A comma is never guessed at: 1,200 may be twelve hundred or one point two.
 */
export function readDecimal(text: string, where: string): Result<Exact> {
  const typed = text
    .trim()
    .replace(/[\u00a0\u2009\u202f ](?=\d)/g, '')
    .replace(/^\u2212/, '-');
  if (typed === '') return refused(problem('number-missing', where));
  if (WITH_COMMA.test(typed)) {
    return refused(problem('comma-for-point', where, { found: text, allowed: typed.replace(',', '.') }));
  }
  if (!PLAIN.test(typed)) return refused(problem('not-a-number', where, { found: text }));
  return done(exact(typed));
}
