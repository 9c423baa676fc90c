import { exact, toText } from '../quantity/index.ts';

/** Digits that are read; what decides anything is the two counts beside it. */
const PLACES = 2;

/** Complaints per thousand units sold, as decimal text; null where nothing was sold. */
export const ratePerThousand = (count: number, units: number): string | null =>
  units <= 0 ? null : toText(exact(count).times(1000).div(units).toDecimalPlaces(PLACES));
