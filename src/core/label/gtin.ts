import { done, problem, type Result, refused } from '../problem.ts';

const LENGTHS = [8, 12, 13, 14];

/**
 * Check digit of a GTIN without it: digits weighted 3 and 1 by turns from the right, the sum taken up to the next ten.
 * Source: GS1 General Specifications, 7.9 (standard check digit calculations), from memory; GS1's own worked example is a test.
 */
export function gtinCheckDigit(digits: string): number {
  const sum = [...digits].reverse().reduce((so, digit, place) => so + Number(digit) * (place % 2 ? 1 : 3), 0);
  return (10 - (sum % 10)) % 10;
}

/** A GTIN of 8, 12, 13 or 14 digits as it is written, blanks and hyphens left out; refused where its check digit is wrong. */
export function readGtin(text: string, where: string): Result<string> {
  const digits = text.replace(/[ -]/g, '');
  if (!/^\d+$/.test(digits) || !LENGTHS.includes(digits.length)) {
    return refused(problem('gtin-wrong-length', where, { found: text, allowed: LENGTHS.join(', ') }));
  }
  const allowed = gtinCheckDigit(digits.slice(0, -1));
  const found = Number(digits.at(-1));
  return found === allowed
    ? done(digits)
    : refused(problem('gtin-check-digit-wrong', where, { found, allowed, parameters: { gtin: digits } }));
}
