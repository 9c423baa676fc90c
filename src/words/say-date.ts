/** What is said where nobody told the zone: the country of the first workshops. */
const HOME_ZONE = 'Europe/London';

export const isDate = (text: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(text);
export const isInstant = (text: string): boolean =>
  /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d+)?)?(Z|[+-]\d{2}:\d{2})$/.test(text);

const inBritish = (text: string, options: Intl.DateTimeFormatOptions): string =>
  // en-GB puts a comma after the weekday; British style does without (Fowler, dates).
  new Intl.DateTimeFormat('en-GB', options).format(new Date(text)).replace(/^(\w+day), /, '$1 ');

/** A day near by: `Friday 27 November`. */
export const sayDate = (date: string): string =>
  inBritish(date, { weekday: 'long', day: 'numeric', month: 'long', timeZone: 'UTC' });

/** A day that may lie in another year: `27 November 2027`. */
export const sayDateWithYear = (date: string): string =>
  inBritish(date, { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });

/** A day that is being chosen, so that nobody takes the month for the day: `Thursday 3 December 2026`. */
export const sayDateInFull = (date: string): string =>
  inBritish(date, { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });

/** The time of day at the workshop: `08:05`. */
export const sayTime = (instant: string, timeZone = HOME_ZONE): string =>
  inBritish(instant, { hour: '2-digit', minute: '2-digit', hourCycle: 'h23', timeZone });

/** An instant on the workshop's own clock: `Friday 27 November, 08:05`. */
export const sayInstant = (instant: string, timeZone = HOME_ZONE): string =>
  `${inBritish(instant, { weekday: 'long', day: 'numeric', month: 'long', timeZone })}, ${sayTime(instant, timeZone)}`;
