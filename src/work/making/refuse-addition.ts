import type { Market } from '../../contract/index.ts';
import { problem } from '../../core/problem.ts';
import { type BatchHead, giveUp, type Writer } from '../../storage/index.ts';
import { say } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { whyHeld } from '../held-scale.ts';
import { workshopZone } from '../local-date.ts';
import { gramsText } from '../quantity-text.ts';
import { findLaterDone } from './find-later-done.ts';
import { findPeroxideStop } from './find-peroxide-stop.ts';
import { findRemedy } from './find-remedy.ts';
import { openJudge } from './judge-weighed.ts';
import {
  type AdditionBody,
  askedUg,
  bandVerdict,
  isAsPlanned,
  proposedBy,
  type Weighing,
} from './weighing-entry.ts';

/** What lies outside its band or comes of another lot than planned has to be explained. */
export function refuseUnexplained(weighing: Weighing): void {
  const { line, state, lot, actual, body } = weighing;
  if (body.deviation || isAsPlanned(weighing)) return;
  if (bandVerdict(weighing) !== 'inside') {
    giveUp(
      problem('weight-outside-band', 'actualGrams', {
        found: gramsText(actual),
        allowed: gramsText(askedUg(weighing)),
        parameters: {
          item: lot.item_name,
          low: gramsText(Math.max(0, line.low_ug - state.inUg)),
          high: gramsText(Math.max(0, line.high_ug - state.inUg)),
        },
      }),
    );
  }
  giveUp(problem('lot-not-planned', lot.number, { parameters: { item: lot.item_name } }));
}

/**
 * What stood on a scale that had failed its check weighs nobody knows what: another scale, or said and explained. Whether
 * it had.
 */
export async function refuseHeldScale(tx: Writer, body: AdditionBody): Promise<boolean> {
  if (body.scaleId === null) return false;
  const held = await whyHeld(tx, body.scaleId, { at: body.stamp.at, where: 'scaleId' });
  if (held && !(body.isScaleHeldKnown && body.deviation)) giveUp(held);
  return held !== undefined;
}

/** Weighed in when the work has gone on is not what the method says: it needs what was done differently and why. */
export async function refuseLate(tx: Writer, { line, state, lot, body }: Weighing): Promise<void> {
  // What comes to it because the batch was made larger is explained by that.
  const isTopUp = state.inUg > 0 && line.asked_after !== null;
  if (body.deviation || isTopUp) return;
  const later = await findLaterDone(tx, line.batch_id, line.position);
  if (later !== undefined) {
    giveUp(problem('weighed-late', 'actualGrams', { found: later, parameters: { item: lot.item_name } }));
  }
}

/**
 * The check that the release makes, made before the entry counts: it can still be taken out now. Whoever was told and
 * says why may go on; the release stops it then. Told before it is asked what happened, so that it is asked once.
 */
export async function refuseUnknownlyOver(
  within: Context,
  batch: BatchHead,
  weighing: Weighing,
): Promise<void> {
  const { line, state, lot, actual, body } = weighing;
  const mayBePlanned = isAsPlanned(weighing);
  // Outside its band it is asked next what happened; inside, only here.
  if (body.isOverKnown && (body.deviation || !mayBePlanned)) return;
  const judge = openJudge(within, {
    batchId: batch.id,
    revisionId: batch.revision_id,
    markets: JSON.parse(batch.markets) as Market[],
  });
  const wrong = await judge(proposedBy(weighing));
  if (wrong === null) return;
  // In its band it may be over together with what is in already. Whoever was told of that is not told at each step.
  if (mayBePlanned && (await judge()) !== null) return;
  const refused = {
    line,
    lotId: lot.id,
    itemName: lot.item_name,
    actualUg: actual,
    inUg: state.inUg,
    leftUg: askedUg(weighing),
  };
  const remedy = await findRemedy(within.storage.db, judge, refused);
  giveUp(
    problem('weighed-over-limits', 'actualGrams', {
      found: gramsText(actual),
      parameters: {
        item: lot.item_name,
        reason: say(wrong, { timeZone: await workshopZone(within) }),
        remedy: remedy.map((each) => say(each)).join(' '),
      },
    }),
  );
}

/** Before it is asked whether the amounts are right: of such a lot none is. */
export async function refusePeroxide(within: Context, batch: BatchHead, weighing: Weighing): Promise<void> {
  const stop = await findPeroxideStop(within, batch, weighing.lot, proposedBy(weighing));
  if (stop) giveUp(stop);
}
