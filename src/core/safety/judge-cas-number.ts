const SHAPE = /^(\d{2,7})-(\d{2})-(\d)$/;

export type CasFault = 'shape' | 'check-digit';

/**
 * What is wrong with a CAS Registry Number; undefined: nothing. Two to seven digits, two digits, one check digit, which
 * is the last digit of the sum of every digit times its place, counted from the right of the first two groups:
 * 107-07-3 gives 1x7 + 2x0 + 3x7 + 4x0 + 5x1 = 33, and 3. Source: CAS, "Check Digit Verification of CAS Registry
 * Numbers". A number that passes may still be another substance's.
 */
export function findCasFault(text: string): CasFault | undefined {
  const [, first, second, check] = SHAPE.exec(text) ?? [];
  if (first === undefined || second === undefined) return 'shape';
  const digits = [...`${first}${second}`].reverse();
  const sum = digits.reduce((total, digit, index) => total + Number(digit) * (index + 1), 0);
  return sum % 10 === Number(check) ? undefined : 'check-digit';
}
