import { sayInstant, sayTime } from '../../words/index.ts';

/** From one instant to another on the workshop's clock: the day is said once where both lie on it. */
export function sayRange(from: string, to: string, timeZone?: string): string {
  const [start, end] = [sayInstant(from, timeZone), sayInstant(to, timeZone)];
  if (start === end) return start;
  const dayOf = (said: string) => said.slice(0, said.lastIndexOf(','));
  return `${start} to ${dayOf(start) === dayOf(end) ? sayTime(to, timeZone) : end}`;
}
