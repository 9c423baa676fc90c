import { isUnderOlderLaw, judgeOldLabels, type OldLabel } from '../../check/index.ts';
import type { Market, Saying } from '../../contract/index.ts';
import { type Problem, problem } from '../../core/problem.ts';
import {
  findRun,
  type LabelCopies,
  type LotAtHand,
  listDecisions,
  listLabelCopies,
  listProducts,
  listReleases,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { openRevision } from '../formulas/index.ts';
import { localDate, workshopToday, workshopZone } from '../local-date.ts';
import { findMadeLookup } from '../making/made-lookup.ts';
import { readProductDetails } from '../read-product-details.ts';
import { saying } from '../saying.ts';

/**
 * Tins whose labels a newer law asks for more than they say, by their lot, for the markets that their product is sold
 * in today. `agreedOn`: the day on which somebody agreed to take them, where it is known. A tin is placed on the market
 * once it is there and somebody agreed to take it (Commission notice "Blue Guide" 2022/C 247/01, 2.3, from memory): the
 * later of its release and that day. What only stood in the workshop was not placed.
 */
export async function findOldLabels(
  context: Context,
  lots: readonly LotAtHand[],
  agreedOn?: string,
): Promise<ReadonlyMap<string, readonly OldLabel[]>> {
  const tins = lots.filter((lot) => lot.item_kind === 'product' && lot.filling_run_id !== null);
  const found = new Map<string, readonly OldLabel[]>();
  if (tins.length === 0) return found;
  const { db } = context.storage;
  const timeZone = await workshopZone(context);
  const today = await workshopToday(context);
  const runIds = tins.flatMap((lot) => lot.filling_run_id ?? []);
  const prints = await listLabelCopies(db, runIds);
  const releases = new Map(
    (await listReleases(db, runIds)).map((row) => [row.filling_run_id, localDate(row.happened_at, timeZone)]),
  );
  for (const lot of tins) {
    const releasedOn = releases.get(lot.filling_run_id ?? '') ?? today;
    const own = prints.filter((row) => row.filling_run_id === lot.filling_run_id);
    const labelledOn = (market: Market) => dayOfLabels(own, { market, lot, timeZone, otherwise: releasedOn });
    if (!isAnyOld([releasedOn, ...own.map((row) => localDate(row.happened_at, timeZone))])) continue;
    const [placedOn = today] = [releasedOn, agreedOn ?? today].sort().reverse();
    const old = await judgeTins(context, lot, { labelledOn, placedOn, today });
    if (old.length > 0) found.set(lot.id, old);
  }
  return found;
}

const isAnyOld = (days: readonly string[]): boolean => days.some(isUnderOlderLaw);

interface Tins {
  readonly market: Market;
  readonly lot: LotAtHand;
  readonly timeZone: string;
  /** Where fewer were printed than there are tins, they carry labels from elsewhere, worded as of this day. */
  readonly otherwise: string;
}

/** The newest labels are on the tins, as far as they go: a print that covers them all takes the place of the older. */
function dayOfLabels(prints: readonly LabelCopies[], { market, lot, timeZone, otherwise }: Tins): string {
  let bare = lot.on_hand;
  let day: string | null = null;
  for (const print of prints.filter((row) => row.market === market)) {
    if (bare <= 0) break;
    bare -= print.copies;
    day = localDate(print.happened_at, timeZone);
  }
  return bare > 0 && (day === null || otherwise < day) ? otherwise : (day ?? otherwise);
}

interface Days {
  readonly labelledOn: (market: Market) => string;
  readonly placedOn: string;
  readonly today: string;
}

async function judgeTins(context: Context, lot: LotAtHand, days: Days): Promise<OldLabel[]> {
  const { db } = context.storage;
  const run = await findRun(db, lot.filling_run_id ?? '');
  const product = (await listProducts(db)).find(({ id }) => id === lot.item_id);
  if (!run || !product) throw new Error(`lot ${lot.number} of tins has no run or no product`);
  const opened = await openRevision(db, run.revision_id, await findMadeLookup(db, run.batch_id));
  // What cannot be opened is not released: its limits are not known.
  if (!opened.ok) return [];
  const decisions = await listDecisions(db, run.revision_id);
  return readProductDetails(product.details).markets.flatMap((market) =>
    judgeOldLabels({
      ...days,
      opened: opened.value,
      decisions,
      market,
      labelledOn: days.labelledOn(market),
    }),
  );
}

export const isTooOld = ({ verdict }: OldLabel): boolean =>
  verdict === 'placed-too-late' || verdict === 'sold-too-late';

const STOPS: Readonly<Record<OldLabel['verdict'], string>> = {
  'may-be-placed': 'none',
  'may-be-sold-on': 'none',
  'placed-too-late': 'placed',
  'sold-too-late': 'sold',
};

const factsOf = ({ market, lacking, undecided, placedUntil, soldUntil, verdict, labelledOn }: OldLabel) => ({
  market,
  names: lacking.length,
  which: lacking.join(', '),
  doubts: undecided.length,
  undecided: undecided.join(', '),
  labelledOn,
  placedUntil,
  soldUntil,
  stop: STOPS[verdict],
});

export const sayOldLabel = (old: OldLabel, batch: string): Saying =>
  saying('label-by-older-law', { ...factsOf(old), batch });

/** Why tins may not go out under the labels that they have. */
export const whyTooOld = (lot: LotAtHand, old: readonly OldLabel[] = []): Problem | undefined => {
  const [first] = old.filter(isTooOld);
  return first && problem('labels-by-older-law', lot.number, { parameters: factsOf(first) });
};
