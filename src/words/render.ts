import { IntlMessageFormat } from 'intl-messageformat';
import { findMeasured, markCounts } from './find-figures.ts';
import { isDate, sayTime } from './say-date.ts';
import { sayDecimal, sayNumber } from './say-figure.ts';

export type Words = Readonly<Record<string, string | number>>;
type Formatters = NonNullable<NonNullable<ConstructorParameters<typeof IntlMessageFormat>[3]>['formatters']>;

/** Parsed once for each text and zone: parsing costs far more than filling in. */
const parsed = new Map<string, IntlMessageFormat>();

function formatIn(text: string, timeZone: string | undefined): IntlMessageFormat {
  const key = `${timeZone ?? ''} ${text}`;
  const known = parsed.get(key);
  if (known) return known;
  const made = new IntlMessageFormat(text, 'en-GB', undefined, { formatters: formattersIn(timeZone) });
  parsed.set(key, made);
  return made;
}

/** The house's own figures and days, in the places where ICU asks Intl. */
const formattersIn = (timeZone: string | undefined): Formatters => ({
  getPluralRules: (...args) => new Intl.PluralRules(...args),
  getNumberFormat: (locale, options) => {
    const format = new Intl.NumberFormat(locale, options as Intl.NumberFormatOptions);
    const places = format.resolvedOptions().maximumFractionDigits;
    return Object.defineProperty(format, 'format', { value: (value: number) => sayNumber(value, places) });
  },
  getDateTimeFormat: (locale, options) => {
    const format = new Intl.DateTimeFormat(locale, options);
    return Object.defineProperty(format, 'format', {
      value: (value: string) => sayMoment(value, options, timeZone),
    });
  },
});

function sayMoment(
  value: string,
  options: Intl.DateTimeFormatOptions | undefined,
  timeZone?: string,
): string {
  if (options?.hour !== undefined && !isDate(value)) return sayTime(value, timeZone);
  const zone = isDate(value) ? 'UTC' : (timeZone ?? 'Europe/London');
  return new Intl.DateTimeFormat('en-GB', { ...options, timeZone: zone }).format(new Date(value));
}

function sayMeasured(text: string, words: Words): Words {
  const measured = findMeasured(text);
  if (measured.size === 0) return words;
  const said = Object.entries(words).map(([name, value]) => [
    name,
    typeof value === 'string' && measured.has(name) ? sayDecimal(value) : value,
  ]);
  return Object.fromEntries(said) as Words;
}

/** Fills an ICU MessageFormat text in. A parameter that the text names and nobody gave comes back as undefined. */
export function render(text: string, words: Words, timeZone?: string): string | undefined {
  try {
    return String(formatIn(markCounts(text, words), timeZone).format(sayMeasured(text, words)));
  } catch (error) {
    if (error instanceof Error && 'code' in error) return undefined;
    throw error;
  }
}
