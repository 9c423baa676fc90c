import type { Saying } from '../contract/index.ts';
import { exact } from '../core/quantity/index.ts';
import type { Checked } from './checked.ts';
import type { DecidedUpon } from './decided-upon.ts';
import { listUnknowns } from './list-unknowns.ts';

/**
 * A decision is upon a share, and weighings stray: it covers up to twice what the formula has of each material (common
 * practice, no source). Known limits and the report are judged on what was weighed, whatever was decided.
 */
const COVERED = 2;

/**
 * What nobody was asked about before, since the formula as it is written does not raise it: an unknown that only the
 * weighing opened, or one that was decided upon a much smaller share.
 */
export function listOpened(written: Checked, weighed: Checked): Saying[] {
  const asked = new Map(listUnknowns(written).map(({ key, upon }) => [key, upon]));
  const opened = listUnknowns(weighed).filter(({ key, upon }) => !isCovered(upon, asked.get(key)));
  return [...new Map(opened.map(({ signature, why }) => [signature, why])).values()];
}

function isCovered(weighed: readonly DecidedUpon[], asked: readonly DecidedUpon[] | undefined): boolean {
  return (
    asked !== undefined &&
    weighed.every(({ percent, material }) => {
      const before = asked.find((one) => one.material.name === material.name);
      return before !== undefined && exact(percent).lte(exact(before.percent).times(COVERED));
    })
  );
}
