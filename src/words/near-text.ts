/**
 * Pieces of a sentence for a day or a part of one, as somebody says them who stands in today: `tomorrow`, `Friday 27
 * November`, `Thursday morning, 3 December`. The `Near` (and `Part`) parameter beside the day tells which way. A weekday
 * never stands alone: a page may be read days after it was printed or left open.
 */
export const dayText = (name: string): string =>
  `{${name}Near, select, today {today} tomorrow {tomorrow} other {{${name}, date, ::EEEE} {${name}, date, ::dMMMM}}}`;

/** What sets goes by no clock: morning, noon, evening. */
export const dayPartText = (name: string): string =>
  `{${name}Near, select, today {{${name}Part, select, night {tonight} noon {noon today} other {this {${name}Part}}}} tomorrow {tomorrow {${name}Part}} other {{${name}, date, ::EEEE} {${name}Part}, {${name}, date, ::dMMMM}}}`;
