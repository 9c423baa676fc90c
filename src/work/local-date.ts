import { Temporal } from 'temporal-polyfill';
import { readWorkshop } from '../storage/index.ts';
import type { Context } from './context.ts';

/** The day it is at the bench: the machine's instant in the workshop's own time zone. */
export async function workshopToday(context: Context): Promise<string> {
  return localDate(context.machine.now(), await workshopZone(context));
}

export async function workshopZone({ storage }: Context): Promise<string> {
  const row = await readWorkshop(storage.db);
  return row === undefined ? 'Europe/London' : (JSON.parse(row.details) as { timeZone: string }).timeZone;
}

export const localDate = (instant: string, zone: string): string =>
  Temporal.Instant.from(instant).toZonedDateTimeISO(zone).toPlainDate().toString();

/** The instant at which a day begins there. */
export const startOfDay = (date: string, zone: string): string =>
  Temporal.PlainDate.from(date).toZonedDateTime(zone).toInstant().toString();
