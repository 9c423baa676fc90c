import type { Market } from '../../contract/index.ts';
import type { SignedRelease } from '../../storage/index.ts';
import { ALL_MARKETS } from '../formulas/index.ts';
import type { Check } from './run-shapes.ts';

/** Every market has a check of its own at a release. */
export const labelCheckOf = (market: Market): string => `label-${market}`;

/** Markets that tins were checked for when somebody decided on them; a product that is sold elsewhere since changes nothing. */
export function clearedMarkets(release: SignedRelease): Market[] {
  const checks = JSON.parse(release.checks) as Check[];
  return ALL_MARKETS.filter((market) => checks.some(({ check }) => check === labelCheckOf(market)));
}
