import { askBeforeClose } from '../../core/filling/index.ts';
import { problem } from '../../core/problem.ts';
import { type Exact, exact, microgramsFromGrams, toText } from '../../core/quantity/index.ts';
import { giveUp, insertRunClose, insertRunCounts, orGiveUp, type Writer } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { inside } from '../inside.ts';
import { localDate, workshopZone } from '../local-date.ts';
import { gramsText } from '../quantity-text.ts';
import { record } from '../record.ts';
import { refuseOpenClaims } from '../refuse-open-claims.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { findRunBestBefore } from './best-before.ts';
import { bookClosing, type Closing } from './book-closing.ts';
import { findBowlSlackUg } from './bowl-slack.ts';
import { countParts } from './count-parts.ts';
import { issuePackaging, listPackagingNeeds } from './issue-packaging.ts';
import { countingTins, errorGramsOf, judgeRecords, standing, weighedHeld } from './judge-records.ts';
import { netGramsOf } from './net-grams-of.ts';
import { openRun } from './open-run.ts';
import { fateUgOf, gatherRuns, isGone, netUgOf, type RunRecords } from './run-records.ts';
import { viewRun } from './run-view.ts';
import { shareBowl } from './share-bowl.ts';
import { viewReady } from './view-ready.ts';

type Body = RequestOf<'closeRun'>['body'];

/** Filling is over: tins, lids, labels and what was in the bowl are booked, and the tins become a lot in quarantine. */
export const closeRun: UseCase<'closeRun'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const head = await openRun(tx, params.id ?? '', body.stamp);
      await refuseOpenClaims(tx, 'filling-run', head.id, `filling run ${head.number}`);
      const [records] = await gatherRuns(tx, [head]);
      if (!records) throw new Error(`filling run ${head.number} has no records`);
      const closing = await planClosing(context, tx, records, body);
      await tell({
        kind: 'run-closed',
        subjectKind: 'filling-run',
        subjectId: head.id,
        payload: storyOf(closing, body),
      });
      await bookClosing(context, tx, closing, body.stamp.id);
      await insertRunClose(tx, {
        entry_id: body.stamp.id,
        filling_run_id: head.id,
        units: closing.units,
        retained_ug: body.retained.keep ? closing.retainedUg : null,
        declined_because: body.retained.keep ? null : body.retained.reason,
        left_ug: closing.leftUg,
        lost_ug: closing.lostUg,
        lot_id: closing.lotId,
      });
      await insertRunCounts(
        tx,
        closing.counts.map((count) => ({
          ...count,
          entry_id: body.stamp.id,
          filling_run_id: head.id,
        })),
      );
      return head.id;
    },
    (id) => viewRun(context, id),
  );

async function planClosing(context: Context, tx: Writer, records: RunRecords, body: Body): Promise<Closing> {
  const { bowl } = records;
  if (!bowl) throw new Error(`filling run ${records.head.number} has no bowl`);
  refuseLightTins(records);
  const within = inside(context, tx);
  const day = localDate(body.stamp.at, await workshopZone(within));
  const units = standing(records).length;
  const filledUg = netUgOf(records.weights);
  const retainedUg = body.retained.keep ? gramsGiven(body.retained.grams, 'retained.grams') : 0;
  const leftUg = gramsGiven(body.leftGrams, 'leftGrams');
  const aside = {
    binnedUg: fateUgOf(records.weights, 'binned'),
    trialUg: fateUgOf(records.weights, 'trial'),
  };
  const shared = orGiveUp(
    shareBowl({
      onHandUg: bowl.on_hand,
      filledUg,
      retainedUg,
      asideUg: aside.binnedUg + aside.trialUg,
      leftUg,
      elsewhereUg: records.elsewhereUg,
      // Each tin, the sample and the rest.
      slackUg: await findBowlSlackUg(tx, bowl, {
        scaleErrorUg: records.head.scale_error_ug,
        weighings: units + 2,
      }),
    }),
  );
  const asked = askBeforeClose({
    missingGrams: missingOf(records),
    tins: units,
    onHeldScale: weighedHeld(records).map((row) => row.tin),
    putAside: records.weights.filter(isGone).length,
    spoiltTins: body.spoiltTins,
    lostGrams: gramsText(shared.lostUg),
    others: records.siblings.flatMap(({ head, close }) =>
      close ? [] : [{ number: head.number, aimGrams: gramsText(head.aim_ug) }],
    ),
  }).filter(({ code }) => !body.sure.includes(code));
  if (asked.length > 0) giveUp(...asked);
  const needs = listPackagingNeeds(records.details, units, body);
  const counts = countParts(needs, viewReady(records.ready).issued, body);
  const issues = await issuePackaging(tx, needs, day);
  const bestBefore = await findRunBestBefore(within, records);
  const lotId = units > 0 ? context.machine.newId() : null;
  const masses = { filledUg, retainedUg, leftUg, ...aside };
  return { ...shared, ...masses, records, bowl, units, issues, counts, lotId, day, bestBefore };
}

/** By the average way, once the share below limit 1 is kept, the mean alone is left that a release can fail by. */
function missingOf(records: RunRecords): Exact | null {
  const { judgedBy, totalGrams, filled } = judgeRecords(records);
  if (judgedBy !== 'average' || filled === 0) return null;
  const missing = exact(records.details.declaredGrams).times(filled).minus(totalGrams);
  return missing.gt(0) ? missing : null;
}

const gramsGiven = (grams: string, where: string): number => orGiveUp(microgramsFromGrams(grams, where));

/**
 * A tin that is too light is refilled or put aside first, and its weight struck. By the average way so many tins may lie
 * below limit 1 as the rule allows of those that were filled; none below limit 2.
 */
function refuseLightTins(records: RunRecords): void {
  const stays = new Set(countingTins(records, judgeRecords(records)));
  const light = standing(records).filter((row) => !stays.has(row));
  if (light.length > 0) {
    giveUp(
      problem('light-tins-left', `filling run ${records.head.number}`, {
        found: light.length,
        parameters: { numbers: light.map((row) => row.tin).join(', ') },
      }),
    );
  }
  refuseManyLight(records);
}

function refuseManyLight(records: RunRecords): void {
  const { tooLight, judgedBy, limits } = judgeRecords(records, standing(records), true);
  if (judgedBy !== 'average' || limits === null || tooLight === 0) return;
  const light = standing(records).filter((row) =>
    netGramsOf(row).minus(errorGramsOf(records, row)).lt(limits.limit1),
  );
  giveUp(
    problem('light-tins-many', `filling run ${records.head.number}`, {
      found: light.length,
      allowed: toText(limits.limit1),
      parameters: { many: tooLight, numbers: light.map((row) => row.tin).join(', ') },
    }),
  );
}

const storyOf = (closing: Closing, body: Body) => ({
  units: closing.units,
  filledGrams: gramsText(closing.filledUg),
  retained: body.retained,
  leftGrams: gramsText(closing.leftUg),
  lostGrams: gramsText(closing.lostUg),
  binnedGrams: gramsText(closing.binnedUg),
  trialGrams: gramsText(closing.trialUg),
  counts: closing.counts,
  sure: body.sure,
  foundGrams: gramsText(closing.foundUg),
  packaging: closing.issues.map((issue) => ({
    lotId: issue.lot.id,
    kind: issue.kind,
    placeId: issue.place_id,
    pieces: issue.quantity,
  })),
  lot:
    closing.lotId === null
      ? null
      : { id: closing.lotId, number: closing.records.head.number, bestBefore: closing.bestBefore },
});
