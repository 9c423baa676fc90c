import type { making, Saying } from '../../contract/index.ts';
import { type Exact, exact, sumOf } from '../../core/quantity/index.ts';
import type { ReportVerdict } from '../../core/safety/index.ts';
import { cutPercent } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { runCheck } from '../formulas/index.ts';
import { saying } from '../saying.ts';
import type { WeighedBatch } from './judge-weighed.ts';
import { readWeighedLookup } from './weighed-lookup.ts';

type Screen = making.BatchScreen;
type Addition = Extract<Screen, { kind: 'addition' }>;

/**
 * What a weighing outside of its band means for those that are still to come: their grams stay as planned, and are
 * another share of the batch. Share in percent: 100 x target / (what is weighed in + what is still to come), exact.
 */
export async function tellShares(
  context: Context,
  batch: WeighedBatch,
  screens: readonly Screen[],
): Promise<Screen[]> {
  const additions = screens.filter((screen) => screen.kind === 'addition');
  const planned = sumOf(additions.map((screen) => screen.targetGrams));
  const now = sumOf(additions.map(({ inGrams, leftGrams }) => exact(inGrams).plus(leftGrams)));
  if (now.eq(planned) || additions.every((screen) => screen.done !== null)) return [...screens];
  const ranges = await readRanges(context, batch);
  const isOff = additions.some(({ entries }) => entries.some(({ verdict }) => verdict !== 'inside'));
  return screens.map((screen) => {
    if (screen.kind !== 'addition' || screen.done !== null) return screen;
    const range = ranges.get(screen.itemId);
    // What always stands is read no more: a figure within its band is told only where the report does not allow it.
    const isTold = isOff || (range !== undefined && range.verdict !== 'within');
    return isTold ? { ...screen, shareNow: sayShare(screen, { planned, now }, range) } : screen;
  });
}

/** By material: how the report finds the batch as it is weighed in so far; the report that it breaks, where there are two. */
async function readRanges(
  context: Context,
  { batchId, revisionId, markets }: WeighedBatch,
): Promise<ReadonlyMap<string, ReportVerdict>> {
  const lookup = await readWeighedLookup(context.storage.db, batchId);
  const checked = await runCheck(context, revisionId, markets, { weighed: lookup });
  if (!checked.ok) return new Map();
  const rows = checked.value.groups.flatMap(({ answer }) => answer.report?.materials ?? []);
  const byStanding = [...rows].sort(
    (one, other) => Number(other.verdict === 'within') - Number(one.verdict === 'within'),
  );
  return new Map(byStanding.map((row) => [row.materialId, row]));
}

interface Totals {
  readonly planned: Exact;
  readonly now: Exact;
}

function sayShare(screen: Addition, { planned, now }: Totals, range: ReportVerdict | undefined): Saying {
  const shareOf = (total: Exact) => exact(screen.targetGrams).times(100).div(total);
  const hasRange = range?.mostPercent !== undefined;
  const bounds = [range?.leastPercent ?? null, range?.mostPercent ?? null];
  return saying('share-now', {
    item: screen.itemName,
    targetGrams: screen.targetGrams,
    nowPercent: cutPercent(shareOf(now).toString(), bounds),
    plannedPercent: cutPercent(shareOf(planned).toString(), bounds),
    verdict: hasRange ? range.verdict : 'none',
    leastPercent: String(range?.leastPercent ?? ''),
    mostPercent: String(range?.mostPercent ?? ''),
  });
}
