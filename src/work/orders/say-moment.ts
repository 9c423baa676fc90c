import type { Saying } from '../../contract/index.ts';
import { localDate } from '../local-date.ts';
import { dayPart, nearDay } from './near-day.ts';

interface Clock {
  readonly today: string;
  readonly timeZone: string;
}

/** An instant under a name, with what its sentence needs to say `Thursday morning`. */
export const sayMomentOf = (clock: Clock, name: string, instant: string): Saying['parameters'] => ({
  [name]: instant,
  [`${name}Near`]: nearDay(localDate(instant, clock.timeZone), clock.today),
  [`${name}Part`]: dayPart(instant, clock.timeZone),
});
