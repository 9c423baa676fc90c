import { type Problem, problem } from '../../core/problem.ts';
import {
  type BatchLineNow,
  giveUp,
  type LotAtHand,
  listLotsAtHand,
  type Writer,
} from '../../storage/index.ts';
import { findAskedBehind } from '../asked-behind.ts';
import { whyNotUsable } from '../lot-use.ts';
import { thingNotFound } from '../record.ts';
import { findStoppedBehind, whyStoppedBehind } from '../stopped-behind.ts';
import { findOlderBases } from './older-bases.ts';
import type { AdditionBody } from './weighing-entry.ts';

export interface LotUse {
  readonly line: BatchLineNow;
  readonly body: AdditionBody;
  /** On which it was weighed. */
  readonly day: string;
  readonly purpose: string;
  /** A person said that it went in, whatever became of its lot since. */
  readonly isAfterAll: boolean;
}

/** What the release looks at by itself, of every lot that went in. */
const IS_SEEN_AT_RELEASE: ReadonlySet<string> = new Set([
  'lot-not-released-for-use',
  'lot-behind-stopped',
  'lot-asked-about',
  'lot-of-older-revision',
]);

/**
 * The lot that something is weighed out of, where it may go in. What lies in the bowl already is a fact and no wish: it is
 * put on record, so that the trace reaches it, and the release of what is made of it says no.
 */
export async function lotToWeigh(tx: Writer, { line, body, ...use }: LotUse): Promise<LotAtHand> {
  const [lot] = await listLotsAtHand(tx, { lotIds: [body.lotId] });
  if (!lot) giveUp(thingNotFound('lotId', body.lotId));
  if (lot.item_id !== line.item_id) refuseOtherItem(lot, line, { body, purpose: use.purpose });
  const hindrance = whyNotUsable(lot, use.day, use.purpose) ?? (await whyStopped(tx, lot, use.purpose));
  if (hindrance && !(use.isAfterAll && IS_SEEN_AT_RELEASE.has(hindrance.code))) giveUp(hindrance);
  return lot;
}

/** What lies behind a lot that is released itself. */
async function whyStopped(tx: Writer, lot: LotAtHand, purpose: string): Promise<Problem | undefined> {
  const stopped = whyStoppedBehind(lot, await findStoppedBehind(tx));
  if (stopped || purpose !== 'sale') return stopped;
  const parameters = { item: lot.item_name };
  const asked = (await findAskedBehind(tx)).get(lot.id);
  if (asked !== undefined) return problem('lot-asked-about', lot.number, { found: asked, parameters });
  const isOlder = (await findOlderBases(tx, [lot])).has(lot.id);
  return isOlder ? problem('lot-of-older-revision', lot.number, { parameters }) : undefined;
}

/**
 * Something else instead: limits, report and label were judged without it. So it goes into a trial only, where a person
 * says so; what is sold is made by a revision that has it.
 */
function refuseOtherItem(
  lot: LotAtHand,
  line: BatchLineNow,
  { body, purpose }: Pick<LotUse, 'body' | 'purpose'>,
): void {
  const parameters = { item: lot.item_name };
  const isOfUse = lot.unit === 'g' && (lot.item_kind === 'material' || lot.item_kind === line.item_kind);
  if (!body.isSubstitute || !isOfUse)
    giveUp(problem('lot-of-another-item', lot.number, { found: lot.item_name }));
  if (purpose !== 'trial') giveUp(problem('substitute-not-for-sale', lot.number, { parameters }));
}
