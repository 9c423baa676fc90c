import { Temporal } from 'temporal-polyfill';

/** Hours may be broken: they are taken to the minute, as the making does when a batch is finished. */
export const addHours = (instant: string, hours: number): string =>
  Temporal.Instant.from(instant)
    .add({ minutes: Math.round(hours * 60) })
    .toString();
