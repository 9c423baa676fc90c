import type { orders, stock } from '../../contract/index.ts';
import { problem } from '../../core/problem.ts';
import { exact, microgramsFromGrams } from '../../core/quantity/index.ts';
import {
  findMaterial,
  giveUp,
  insertFillWeight,
  nextWeightNumber,
  orGiveUp,
  type RunHead,
  type Writer,
} from '../../storage/index.ts';
import { gramsText } from '../quantity-text.ts';
import { readProductDetails } from '../read-product-details.ts';
import { record } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { findBowlSlackUg } from './bowl-slack.ts';
import { standing } from './judge-records.ts';
import { openRun } from './open-run.ts';
import { gatherRuns, netUgOf } from './run-records.ts';
import { viewRun } from './run-view.ts';

type Body = RequestOf<'recordFill'>['body'];

/** A tin that holds more than so many times its label is another kind of tin, or misread (common practice, no source). */
const MOST_TIMES_DECLARED = 2;

/** One tin weighed. A figure that cannot be meant is asked about; a tin too light is taken down and called so. */
export const recordFill: UseCase<'recordFill'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const run = await openRun(tx, params.id ?? '', body.stamp);
      const { grossUg, tareUg } = readWeight(run, body);
      await refuseAbsurd(tx, run, grossUg, tareUg);
      if (!body.isContentSure) askAboutContent(run, grossUg - tareUg);
      await refuseEmptyBowl(tx, run, grossUg - tareUg);
      const number = await nextWeightNumber(tx, run.id);
      await tell({
        kind: 'tin-weighed',
        subjectKind: 'filling-run',
        subjectId: run.id,
        payload: {
          number,
          grossGrams: gramsText(grossUg),
          tareGrams: gramsText(tareUg),
          ...(body.isContentSure && { isContentSure: true }),
        },
      });
      await insertFillWeight(tx, {
        entry_id: body.stamp.id,
        filling_run_id: run.id,
        number,
        gross_ug: grossUg,
        tare_ug: tareUg,
      });
      return run.id;
    },
    (id) => viewRun(context, id),
  );

function readWeight(run: RunHead, body: Body) {
  const grossUg = orGiveUp(microgramsFromGrams(body.grossGrams, 'grossGrams'));
  const tareUg =
    body.tareGrams === null ? run.tare_ug : orGiveUp(microgramsFromGrams(body.tareGrams, 'tareGrams'));
  if (tareUg === null) giveUp(problem('tare-missing', 'tareGrams'));
  return { grossUg, tareUg };
}

/** Nothing in it, ten times off the label, or the tin weighed along: asked, not written. */
async function refuseAbsurd(tx: Writer, run: RunHead, grossUg: number, tareUg: number): Promise<void> {
  const netUg = grossUg - tareUg;
  const details = readProductDetails(run.product_details);
  const declaredUg = orGiveUp(microgramsFromGrams(details.declaredGrams, 'declaredGrams'));
  const found = gramsText(netUg);
  if (netUg <= 0) {
    giveUp(
      problem('net-not-above-nought', 'grossGrams', {
        found: gramsText(grossUg),
        allowed: gramsText(tareUg),
      }),
    );
  }
  if (netUg >= declaredUg * 10 || netUg * 10 <= declaredUg) {
    giveUp(problem('net-ten-times-off', 'grossGrams', { found, allowed: details.declaredGrams }));
  }
  const tinUg = netUg > run.aim_ug ? await knownTareUg(tx, run, details) : 0;
  if (isTareForgotten({ netUg, tareUg, aimUg: run.aim_ug, tinUg })) {
    giveUp(
      problem('tare-forgotten', 'tareGrams', {
        found,
        allowed: gramsText(tinUg),
        parameters: { withTare: gramsText(grossUg - tinUg), aim: gramsText(run.aim_ug) },
      }),
    );
  }
}

/** Twice the label to the microgram is still taken; above it a person says that it is so. */
function askAboutContent(run: RunHead, netUg: number): void {
  const { declaredGrams } = readProductDetails(run.product_details);
  const declaredUg = orGiveUp(microgramsFromGrams(declaredGrams, 'declaredGrams'));
  if (netUg <= declaredUg * MOST_TIMES_DECLARED) return;
  giveUp(problem('net-far-above-label', 'grossGrams', { found: gramsText(netUg), allowed: declaredGrams }));
}

/** Tins cannot hold more than the bowl did, the errors of the weighings aside: then a weight, a tare or the yield is wrong. */
async function refuseEmptyBowl(tx: Writer, run: RunHead, netUg: number): Promise<void> {
  const [records] = await gatherRuns(tx, [run]);
  if (!records?.bowl) throw new Error(`filling run ${run.number} has no bowl`);
  const { bowl, elsewhereUg, weights } = records;
  const heldUg = bowl.on_hand - elsewhereUg;
  const filledUg = netUgOf(weights);
  const slackUg = await findBowlSlackUg(tx, bowl, {
    scaleErrorUg: run.scale_error_ug,
    weighings: standing(records).length + 1,
  });
  if (filledUg + netUg <= heldUg + slackUg) return;
  giveUp(
    problem('bowl-holds-less', 'grossGrams', {
      found: gramsText(netUg),
      allowed: gramsText(Math.max(0, heldUg - filledUg)),
      parameters: { held: gramsText(Math.max(0, heldUg)), filled: gramsText(filledUg) },
    }),
  );
}

async function knownTareUg(tx: Writer, run: RunHead, details: orders.ProductDetails): Promise<number> {
  if (run.tare_ug) return run.tare_ug;
  const tin = await findMaterial(tx, details.tinId);
  const tare = tin && (JSON.parse(tin.details) as stock.MaterialDetails).tareGrams;
  return tare ? exact(tare).times(1_000_000).toNumber() : 0;
}

export interface TareQuestion {
  readonly netUg: number;
  /** What was taken off. */
  readonly tareUg: number;
  readonly aimUg: number;
  /** What the tin is known to weigh. */
  readonly tinUg: number;
}

/**
 * Whether the tin was weighed along: less than half of what it is known to weigh was taken off, and the net mass lies
 * nearer to the aim with the whole tin taken off than without (common practice, no source).
 */
export function isTareForgotten({ netUg, tareUg, aimUg, tinUg }: TareQuestion): boolean {
  const missing = tinUg - tareUg;
  return tareUg * 2 < tinUg && Math.abs(netUg - missing - aimUg) < Math.abs(netUg - aimUg);
}
