import type { Saying } from '../contract/index.ts';
import type { ReasonKind } from '../core/safety/index.ts';
import type { Checked } from './checked.ts';
import { listReasons } from './list-reasons.ts';

/** What depends on how much of each is in it. */
const OF_AMOUNTS: Readonly<Partial<Record<ReasonKind, string>>> = {
  over: 'sale-over',
  prohibited: 'sale-prohibited',
  'supplier-over': 'sale-supplier-over',
  'report-over': 'sale-report-over',
  'report-below': 'sale-report-below',
};
const CODES: ReadonlySet<string> = new Set([...Object.values(OF_AMOUNTS), 'sale-peroxide-over']);

/** Every limit and range that the amounts in it break, each with its figure, its bound and whose it is. */
export function listStops(checked: Checked): Saying[] {
  const isBroken = checked.groups.some(({ answer }) =>
    answer.reasons.some(({ kind }) => OF_AMOUNTS[kind] !== undefined),
  );
  if (!isBroken) return [];
  return listReasons(checked)
    .map(({ says }) => says)
    .filter(({ code }) => CODES.has(code));
}
