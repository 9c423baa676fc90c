import { Temporal } from 'temporal-polyfill';

/** YYYY-MM-DD of a day that there is. */
export function isCalendarDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  try {
    return Temporal.PlainDate.from(text, { overflow: 'reject' }).toString() === text;
  } catch (mistake) {
    if (mistake instanceof RangeError) return false;
    throw mistake;
  }
}
