/**
 * Between thousands: a space that never breaks a line (ISO 80000-1, 7.3.1: groups of three, no comma). Not the narrow
 * one: in our typeface that is hardly seen, and 1 000 looks like 1000.
 */
const GROUP_SPACE = '\u00a0';
const NO_BREAK_SPACE = '\u00a0';

/** Decimal text, as it stands, with its thousands apart: `12345.60` becomes `12 345.60`. Never rounded. */
export function sayDecimal(value: string | number): string {
  const text = String(value);
  const read = /^([+-]?)(\d+)(\.\d+)?$/.exec(text);
  if (!read) return text;
  const whole = (read[2] ?? '').replace(/\B(?=(\d{3})+$)/g, GROUP_SPACE);
  return `${read[1]?.replace('-', '\u2212') ?? ''}${whole}${read[3] ?? ''}`;
}

/** A number for reading, at most `places` decimals. */
export const sayNumber = (value: number, places = 3): string =>
  sayDecimal(
    new Intl.NumberFormat('en-GB', { maximumFractionDigits: places, useGrouping: false }).format(value),
  );

/** Grams as the wire carries them: `1 234.5 g`. */
export const sayGrams = (grams: string | number): string => `${sayDecimal(grams)}${NO_BREAK_SPACE}g`;

/** Money as decimal text in one currency: `£1 027.40`. */
export const sayMoney = (amount: string, currency: string): string =>
  new Intl.NumberFormat('en-GB', { style: 'currency', currency })
    .formatToParts(amount as Intl.StringNumericLiteral)
    .map(({ type, value }) => (type === 'group' ? GROUP_SPACE : type === 'minusSign' ? '\u2212' : value))
    .join('');
