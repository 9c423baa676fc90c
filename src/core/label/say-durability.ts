import { Temporal } from 'temporal-polyfill';

const twoDigits = (value: number): string => String(value).padStart(2, '0');

/**
 * How the date of minimum durability stands on the label. Article 19(1)(c) asks for "best used before the end of" with
 * month and year, or day, month and year. "The end of" a month promises its last day, so a date within the month is
 * written with its day: nothing is promised that the product was not made to keep.
 */
export function sayDurability(date: string): string {
  const { day, month, year, daysInMonth } = Temporal.PlainDate.from(date);
  const monthAndYear = `${twoDigits(month)}/${year}`;
  return `Best used before the end of ${day === daysInMonth ? '' : `${twoDigits(day)}/`}${monthAndYear}`;
}
