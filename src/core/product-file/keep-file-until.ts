import { Temporal } from 'temporal-polyfill';

export interface LastPlaced {
  readonly lastReleasedOn: string | null;
  readonly lastSentOn: string | null;
}

export interface KeepUntil {
  /** The last day on which the file has to be there; from the day after, it need not. */
  readonly until: string;
  readonly from: string;
  readonly by: 'sent' | 'released';
}

/**
 * How long a product information file is kept: so many years after the day on which the last batch was placed on the
 * market. That day is the last dispatch, or the last release where that came later: what is released may have been sold
 * at once. A period of years ends with the day of the same date; where the month has no such day, with its last.
 * null: nothing was placed on the market yet.
 * Source: Regulation (EC) No 1223/2009, Article 11(1); Regulation (EEC, Euratom) No 1182/71, Article 3(2)(c) (the latter
 * from memory).
 */
export function keepFileUntil({ lastReleasedOn, lastSentOn }: LastPlaced, years: number): KeepUntil | null {
  const isSent = lastSentOn !== null && (lastReleasedOn === null || lastSentOn >= lastReleasedOn);
  const from = isSent ? lastSentOn : lastReleasedOn;
  if (from === null) return null;
  const until = Temporal.PlainDate.from(from).add({ years }, { overflow: 'constrain' }).toString();
  return { until, from, by: isSent ? 'sent' : 'released' };
}

/** On its last day the file is still kept. */
export const mustKeep = ({ until }: KeepUntil, today: string): boolean => today <= until;
