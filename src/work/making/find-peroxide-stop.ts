import { listStops } from '../../check/index.ts';
import type { Market } from '../../contract/index.ts';
import { type Problem, problem } from '../../core/problem.ts';
import type { BatchHead, LotAtHand } from '../../storage/index.ts';
import { say } from '../../words/index.ts';
import { readCounting } from '../certificates/read-counting.ts';
import type { Context } from '../context.ts';
import { runCheck } from '../formulas/index.ts';
import { readWeighedLookup, type WeighedIn } from './weighed-lookup.ts';

/**
 * What keeps one lot out of what is sold, however little of it: a peroxide value over its limit, measured of this lot
 * or of one that it was made of. Another lot, or a newer certificate, is the way out; weighing less is none.
 */
export async function findPeroxideStop(
  context: Context,
  batch: BatchHead,
  lot: LotAtHand,
  proposed: WeighedIn,
): Promise<Problem | undefined> {
  const own = lot.batch_id === null ? await readCounting(context.storage.db, [lot.id]) : undefined;
  if (own && own.get(lot.id)?.details.peroxide == null) return undefined;
  const lookup = await readWeighedLookup(context.storage.db, batch.id, proposed);
  if (![...lookup.certified.values()].some(({ details }) => details.peroxide !== null)) return undefined;
  const markets = JSON.parse(batch.markets) as Market[];
  const checked = await runCheck(context, batch.revision_id, markets, { weighed: lookup });
  if (!checked.ok) return undefined;
  const behind = own ? [lot.number] : await numbersBehind(context, lot);
  const stop = listStops(checked.value).find(
    ({ code, parameters }) =>
      code === 'sale-peroxide-over' &&
      String(parameters.lots)
        .split(', ')
        .some((number) => behind.includes(number)),
  );
  return stop && problem('lot-peroxide-over', lot.number, { parameters: { reason: say(stop) } });
}

async function numbersBehind({ storage: { db } }: Context, { batch_id }: LotAtHand): Promise<string[]> {
  const { certified } = await readWeighedLookup(db, batch_id ?? '');
  return [...certified.values()].map(({ lotNumber }) => lotNumber);
}
