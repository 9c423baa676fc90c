import type { Saying } from '../../contract/index.ts';
import { type LotAtHand, listLastUses } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { localDate, workshopZone } from '../local-date.ts';
import { saying } from '../saying.ts';
import type { RunRecords } from './run-records.ts';

type Facts = Pick<RunRecords, 'head' | 'tins'>;

/**
 * What is wrong with the dates of the lots behind some tins, as they are known today: a lot that had ended before it
 * was used, or one that ends before the tins say that they do. Nothing: null.
 */
export async function judgeLotDates(
  context: Context,
  { head, tins }: Facts,
  behind: readonly LotAtHand[],
): Promise<Saying | null> {
  const dated = behind.filter((lot) => lot.best_before !== null);
  const into = { batchIds: batchesBehind(head.batch_id, behind), runId: head.id };
  const ids = dated.map((lot) => lot.id);
  const uses = await listLastUses(context.storage.db, ids, into);
  const zone = await workshopZone(context);
  const usedOn = new Map(uses.map((use) => [use.lotId, localDate(use.usedAt, zone)]));
  for (const lot of dated) {
    const day = usedOn.get(lot.id);
    if (day !== undefined && lot.best_before !== null && lot.best_before < day)
      return saying('check-lot-past-when-used', { ...factsOf(lot), day });
  }
  const shorter = dated.find((lot) => lot.unit === 'g' && outlasts(tins, lot));
  return shorter
    ? saying('check-lot-ends-first', { ...factsOf(shorter), tins: tins?.best_before ?? '' })
    : null;
}

const batchesBehind = (own: string, behind: readonly LotAtHand[]): string[] => [
  ...new Set([own, ...behind.flatMap(({ batch_id }) => batch_id ?? [])]),
];

const factsOf = ({ number, item_name, best_before }: LotAtHand) => ({
  lot: number,
  item: item_name,
  bestBefore: best_before ?? '',
});

const outlasts = (tins: LotAtHand | undefined, lot: LotAtHand): boolean =>
  tins?.best_before != null && lot.best_before !== null && tins.best_before > lot.best_before;
