import { Temporal } from 'temporal-polyfill';

const twoDigits = (value: number): string => String(value).padStart(2, '0');

/**
 * The date of minimum durability in figures, language-free: month and year, or day, month and year. "The end of" a month
 * promises its last day, so a date within the month is written with its day: nothing is promised that the product was not
 * made to keep. Source: Regulation (EC) No 1223/2009, Article 19(1)(c).
 */
export function durabilityFigures(date: string): string {
  const { day, month, year, daysInMonth } = Temporal.PlainDate.from(date);
  return `${day === daysInMonth ? '' : `${twoDigits(day)}/`}${twoDigits(month)}/${year}`;
}
