import { makeStore } from '../api/make-store.ts';

/** By how much this tablet's clock is ahead of the workshop's, in milliseconds; below nought it is behind. */
export const clockAhead = makeStore(0);

/** As much as the workshop lets two clocks differ (common practice, no source): more is told. */
export const CLOCKS_DIFFER_MS = 5 * 60_000;
/** What was entered by a clock so far behind is asked about before it stands. */
export const FAR_BEHIND_MS = 60 * 60_000;
/** The workshop tells whole seconds (RFC 9110, section 5.6.7), and an answer takes a moment. */
const STEP_MS = 2_000;

/** The workshop's time, as far as its clock is known here: timers that began on another tablet end at the same moment. */
export const workshopNow = (): number => Date.now() - clockAhead.read();

/**
 * When something is entered, by the workshop's clock. One that is far behind is left as it is: whoever entered by it is
 * asked, and may know that this machine is right.
 */
export const momentOfEntry = (): string =>
  new Date(clockAhead.read() < -FAR_BEHIND_MS ? Date.now() : workshopNow()).toISOString();

/** Both clocks, as an answer was read: `date` is its header of that name. */
export function noteClocks(date: string | null, now: number): void {
  const there = date === null ? Number.NaN : Date.parse(date);
  if (Number.isNaN(there)) return;
  const ahead = now - there;
  if (Math.abs(ahead - clockAhead.read()) > STEP_MS) clockAhead.write(ahead);
}
