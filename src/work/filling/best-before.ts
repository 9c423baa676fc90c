import { DURABILITY_THRESHOLD_MONTHS } from '../../catalogue/index.ts';
import { type Durability, decideBestBefore } from '../../core/label/index.ts';
import type { Context } from '../context.ts';
import { localDate, workshopZone } from '../local-date.ts';
import type { RunRecords } from './run-records.ts';

type Facts = Pick<RunRecords, 'head' | 'details' | 'bowl'>;

/**
 * Counted from the day the batch was made, and never past the first of its lots to end (the bowl's own date says when,
 * and is shortened with theirs).
 * null: it cannot be told.
 */
export async function findRunDurability(
  context: Context,
  { head, details, bowl }: Facts,
): Promise<Durability | null> {
  if (head.made_at === null) return null;
  const made = localDate(head.made_at, await workshopZone(context));
  const lots = bowl?.best_before ? [bowl.best_before] : [];
  const months = details.bestBeforeMonths;
  const durability = decideBestBefore({ made, months, lots }, DURABILITY_THRESHOLD_MONTHS);
  return durability.ok ? durability.value : null;
}

export const findRunBestBefore = async (context: Context, facts: Facts): Promise<string | null> =>
  (await findRunDurability(context, facts))?.date ?? null;
