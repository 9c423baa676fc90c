import type { making } from '../../contract/index.ts';
import { done, problem, type Result, refused } from '../../core/problem.ts';
import { microgramsFromGrams } from '../../core/quantity/index.ts';
import { findBatch, type Reader } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { gramsText } from '../quantity-text.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { findLaterDone } from './find-later-done.ts';
import { type LaidResize, layOutResize } from './lay-out-resize.ts';

/** What it takes to make the batch as large as what is in of one line; writes nothing. */
export const offerResize: UseCase<'offerResize'> = async (context, { body, params: { id = '' } }) => {
  const head = await findBatch(context.storage.db, id);
  if (!head) return refused(thingNotFound('id', id));
  if (head.outcome !== null)
    return refused(
      problem('batch-not-making', `batch ${head.number}`, { found: head.outcome, allowed: 'making' }),
    );
  const more = microgramsFromGrams(body.moreGrams, 'moreGrams');
  if (!more.ok) return more;
  const laid = await layOutResize(context, head, { position: body.position, moreUg: more.value });
  return laid.ok ? viewOffer(context, laid.value) : laid;
};

async function viewOffer(context: Context, laid: LaidResize): Promise<Result<making.ResizeOffer>> {
  return done({
    position: laid.position,
    direction: laid.isUg >= laid.wasUg ? 'larger' : 'smaller',
    isPossible: laid.hindrances.length === 0,
    hindrances: [...laid.hindrances],
    wasGrams: gramsText(laid.wasUg),
    isGrams: gramsText(laid.isUg),
    lines: await viewLines(context.storage.db, laid),
    tins: laid.tins.map((tin) => ({ ...tin })),
    room: [...laid.room],
    upon: laid.upon,
  });
}

async function viewLines(db: Reader, { lines }: LaidResize): Promise<making.ResizeOffer['lines']> {
  const views: making.ResizeOffer['lines'] = [];
  for (const { line, inUg, targetUg, leftUg, state, weighing } of lines) {
    const later = state === 'more' ? await findLaterDone(db, line.batch_id, line.position) : undefined;
    views.push({
      position: line.position,
      itemName: line.item_name,
      lotNumber: line.lot_number,
      inGrams: gramsText(inUg),
      wasGrams: gramsText(line.target_ug),
      isGrams: gramsText(targetUg),
      leftGrams: gramsText(leftUg),
      scaleName: weighing?.scale?.name ?? null,
      state,
      laterDone: later ?? null,
      warning: weighing?.warning ?? null,
    });
  }
  return views;
}
