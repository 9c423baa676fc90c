import { Temporal } from 'temporal-polyfill';

/** The same instant without its offset, so that the file can put instants in order as it keeps them: as text. */
export const instantInUtc = (instant: string): string => Temporal.Instant.from(instant).toString();
