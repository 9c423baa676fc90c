import type { Market } from '../contract/index.ts';
import type { ReadFacts } from './check-draft.ts';

/** Those whose law the tables hold; the United States are looked at by themselves. */
const ALL: readonly Market[] = ['GB', 'NI', 'EU'];

/** As the workshop asks it: those that were chosen, else where its products are sold, else every one. */
export function marketsAsked(
  { sold }: Pick<ReadFacts, 'sold'>,
  chosen: readonly Market[],
): readonly Market[] {
  if (chosen.length > 0) return chosen;
  return sold.markets.length > 0 ? sold.markets : ALL;
}
