import { randomUUID } from 'node:crypto';

/** A stamp as a page makes it. */
export const stampBy = (by: string, at: string = new Date().toISOString()) => ({
  id: randomUUID(),
  at,
  by,
  device: 'test bench',
});

/** YYYY-MM-DD, so many days after today. */
export const inDays = (days: number): string =>
  new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
