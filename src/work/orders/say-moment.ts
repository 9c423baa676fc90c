import { Temporal } from 'temporal-polyfill';
import type { Saying } from '../../contract/index.ts';
import { dayPart, NIGHT_ENDS, nearDay } from './near-day.ts';

interface Clock {
  readonly today: string;
  readonly timeZone: string;
}

/**
 * An instant under a name, with what its sentence needs to say `Thursday morning`. The small hours belong to the night
 * before: one in the morning on Saturday is Friday night.
 */
export function sayMomentOf(clock: Clock, name: string, instant: string): Saying['parameters'] {
  const local = Temporal.Instant.from(instant).toZonedDateTimeISO(clock.timeZone);
  const day = local.toPlainDate().subtract({ days: local.hour < NIGHT_ENDS ? 1 : 0 });
  return {
    [name]: day.toString(),
    [`${name}Near`]: nearDay(day.toString(), clock.today),
    [`${name}Part`]: dayPart(instant, clock.timeZone),
  };
}
