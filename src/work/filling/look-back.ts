import type { Saying } from '../../contract/index.ts';
import {
  type LotAtHand,
  listCertificates,
  listChangedSinceMade,
  listEntriesOf,
  listFirstUses,
  listLotsAtHand,
  listReleasedRuns,
  type Reader,
  type RunHead,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { walkLots } from '../trace/walk-lots.ts';
import { checkRelease } from './release-checks.ts';
import { gatherRuns, type RunRecords } from './run-records.ts';

/** Released tins that would not be released today, for what was learnt of a lot behind them since. */
export interface ShakenRun {
  readonly head: RunHead;
  readonly tins: LotAtHand;
  readonly says: readonly Saying[];
  /** Lots behind them that were told anew after their release. */
  readonly toldAnew: readonly string[];
}

/**
 * A paper that comes after the release, a material told anew, or a weighing that comes late, may show that tins hold more
 * than a limit allows or that their label lacks a name. Whoever is responsible acts at once, and withdraws or recalls them where that is needed.
 * Source: Regulation (EC) No 1223/2009, Article 5(2); retained in Great Britain.
 */
export async function listShakenRuns(context: Context): Promise<ShakenRun[]> {
  const { db } = context.storage;
  const told = await readToldAnew(db);
  const { reached } = await walkLots(db, [...told.keys()], 'forward');
  const heads = await listReleasedRuns(
    db,
    reached.map(({ lotId }) => lotId),
  );
  const shaken: ShakenRun[] = [];
  for (const records of await gatherRuns(db, heads)) {
    const found = await lookBack(context, records, told);
    if (found) shaken.push(found);
  }
  return shaken;
}

/**
 * Lot: when its composition was told anew, by a paper or with its material, after it had gone into something; and of what
 * was made here, when a weighing that a tablet brought late was entered into it, or one of it struck, after it was made.
 */
async function readToldAnew(db: Reader): Promise<ReadonlyMap<string, string>> {
  const told = new Map<string, string>();
  const note = (lotId: string, at: string) => {
    if (at > (told.get(lotId) ?? '')) told.set(lotId, at);
  };
  for (const { lot_id, happened_at } of await listCertificates(db)) note(lot_id, happened_at);
  const changed = new Map(
    (await listEntriesOf(db, ['material-changed'])).map((row) => [row.subject_id, row.happened_at]),
  );
  for (const lot of await listLotsAtHand(db, { itemIds: [...changed.keys()] }))
    note(lot.id, changed.get(lot.item_id) ?? '');
  const uses = await listFirstUses(db, [...told.keys()]);
  const used = new Map([...told].filter(([lotId, at]) => (uses.get(lotId) ?? at) < at));
  for (const { lot_id, changed_at } of await listChangedSinceMade(db))
    if (changed_at > (used.get(lot_id) ?? '')) used.set(lot_id, changed_at);
  return used;
}

async function lookBack(
  context: Context,
  records: RunRecords,
  told: ReadonlyMap<string, string>,
): Promise<ShakenRun | null> {
  const { head, tins, release } = records;
  if (!release || tins?.status !== 'released') return null;
  const { reached } = await walkLots(context.storage.db, [tins.id], 'back');
  const toldAnew = reached
    .map(({ lotId }) => lotId)
    .filter((lotId) => (told.get(lotId) ?? '') > release.happened_at);
  if (toldAnew.length === 0) return null;
  const failed = (await checkRelease(context, records)).filter(
    ({ check, isPassed }) => !isPassed && isOfContent(check),
  );
  // What was weighed in says it all where both fail: the limits tell only the first of the same reasons.
  const isWeighedToo = failed.some(({ check }) => check === 'weighed');
  const says = failed.filter(({ check }) => !isWeighedToo || check !== 'limits').map(({ detail }) => detail);
  return says.length === 0 ? null : { head, tins, says, toldAnew };
}

/** What is in the tins and what stands on them; that a report ran out since, or a lot was stopped, is told elsewhere. */
const isOfContent = (check: string): boolean =>
  ['limits', 'weighed', 'worst'].includes(check) || check.startsWith('label');
