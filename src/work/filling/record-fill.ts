import { askAboutFill, type FillReading, middleTare, refuseEmptyFill } from '../../core/filling/index.ts';
import type { Problem } from '../../core/problem.ts';
import { problem } from '../../core/problem.ts';
import { type ExactInput, gramsFromMicrograms, microgramsFromGrams } from '../../core/quantity/index.ts';
import {
  type FillWeightRow,
  giveUp,
  insertFillWeight,
  nextWeightNumber,
  orGiveUp,
  type Writer,
} from '../../storage/index.ts';
import { whyHeld } from '../held-scale.ts';
import { gramsText } from '../quantity-text.ts';
import { record, thingNotFound } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { findBowlSlackUg } from './bowl-slack.ts';
import { standing } from './judge-records.ts';
import { type FillWay, wayNow } from './measure-way.ts';
import { openRun } from './open-run.ts';
import { refuseUnclear } from './prepare-run.ts';
import { gatherRuns, isTin, type RunRecords, takenUgOf } from './run-records.ts';
import { viewRun } from './run-view.ts';

type Body = RequestOf<'recordFill'>['body'];

/**
 * One tin weighed. A figure that looks like a slip is asked about, and the answer kept with it; a tin too light is taken
 * down and called so. Filled up and weighed again, both weights stand and the later counts.
 */
export const recordFill: UseCase<'recordFill'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const run = await openRun(tx, params.id ?? '', body.stamp);
      await refuseUnclear(tx, run);
      const [records] = await gatherRuns(tx, [run]);
      if (!records?.bowl) throw new Error(`filling run ${run.number} has no bowl`);
      const weight = readWeight(records, body);
      const held = await whyHeld(tx, run.scale_id, { at: body.stamp.at, where: 'grossGrams' });
      const sure = askAbout(records, weight, body, held);
      await refuseEmptyBowl(tx, records, weight);
      const row = { ...weight, sure, number: await nextWeightNumber(tx, run.id) };
      await tell({
        kind: 'tin-weighed',
        subjectKind: 'filling-run',
        subjectId: run.id,
        payload: storyOf(row),
      });
      const sureText = sure.length === 0 ? null : JSON.stringify(sure);
      await insertFillWeight(tx, {
        ...row,
        entry_id: body.stamp.id,
        filling_run_id: run.id,
        sure: sureText,
      });
      return run.id;
    },
    (id) => viewRun(context, id),
  );

type Weight = Pick<FillWeightRow, 'gross_ug' | 'tare_ug' | 'way' | 'error_ug' | 'refill_of'>;

const storyOf = (row: Weight & { readonly number: number; readonly sure: readonly string[] }) => ({
  number: row.number,
  grossGrams: gramsText(row.gross_ug),
  tareGrams: gramsText(row.tare_ug),
  way: row.way,
  errorGrams: gramsText(row.error_ug ?? 0),
  ...(row.refill_of !== null && { refillOf: row.refill_of }),
  ...(row.sure.length > 0 && { sure: row.sure }),
});

function readWeight(records: RunRecords, body: Body): Weight {
  const { head } = records;
  const gross_ug = orGiveUp(microgramsFromGrams(body.grossGrams, 'grossGrams'));
  const refilled = body.refillOf === null ? null : refillable(records, body.refillOf);
  const given = body.tareGrams === null ? null : orGiveUp(microgramsFromGrams(body.tareGrams, 'tareGrams'));
  const now = wayNow(head);
  // The tin that is filled up is the tin that was weighed: nobody can weigh it empty any more, however others are weighed.
  if (refilled && given === null) {
    const { tare_ug, way, error_ug } = refilled;
    return { gross_ug, tare_ug, way: way ?? now.way, error_ug, refill_of: body.refillOf };
  }
  const tare_ug = given ?? head.tare_ug;
  if (tare_ug === null) giveUp(problem('tare-missing', 'tareGrams'));
  const way = given === null ? now.way : wayOfGiven(given);
  const error_ug = way === 'mean' ? head.scale_error_ug : now.scaleErrorUg;
  return { gross_ug, tare_ug, way, error_ug, refill_of: body.refillOf };
}

const wayOfGiven = (tareUg: number): FillWay => (tareUg === 0 ? 'net' : 'own');

/** Only what stands is filled up. */
function refillable({ weights, head }: RunRecords, entryId: string) {
  const weight = weights.find((row) => row.entry_id === entryId);
  if (!weight) giveUp(thingNotFound('refillOf', entryId));
  if (!isTin(weight))
    giveUp(
      problem('tin-not-there', 'refillOf', {
        found: weight.tin,
        parameters: { run: head.number, how: weight.is_struck ? 'struck' : 'refilled' },
      }),
    );
  return weight;
}

/** The questions that were answered with "it is so"; the first that was not is asked, and nothing is written. */
function askAbout(records: RunRecords, weight: Weight, body: Body, held: Problem | undefined): string[] {
  const reading = readingOf(records, weight);
  const asked = [...(held ? [held] : []), ...askAboutFill(reading)];
  const isAnswered = ({ code }: Problem): boolean => body.sure.includes(code);
  const open = asked.find((each) => !isAnswered(each));
  const empty = refuseEmptyFill(reading);
  // A slip of the unit explains why less than the empty tin is shown; whoever says that it is so is refused.
  if (empty && open?.code !== 'reading-other-unit' && open?.code !== 'reading-ten-times') giveUp(empty);
  if (open) giveUp(open);
  return asked.map(({ code }) => code);
}

function readingOf(records: RunRecords, weight: Weight): FillReading {
  const { head, details, scale, weights } = records;
  const last = weights.findLast((row) => row.fate !== 'slip');
  const refilled = weights.find((row) => row.entry_id === weight.refill_of);
  return {
    grossGrams: gramsFromMicrograms(weight.gross_ug),
    tareGrams: gramsFromMicrograms(weight.tare_ug),
    declaredGrams: details.declaredGrams,
    aimGrams: gramsFromMicrograms(head.aim_ug),
    tinGrams: head.tare_ug ? gramsFromMicrograms(head.tare_ug) : (records.tinGrams ?? ownTinGrams(records)),
    readabilityGrams: scale?.readability_grams ?? 0,
    lastGrossGrams: last && weight.refill_of === null ? gramsFromMicrograms(last.gross_ug) : null,
    refilledNetGrams: refilled ? gramsFromMicrograms(refilled.gross_ug - refilled.tare_ug) : null,
    isTareOwn: weight.way === 'own' && !refilled,
  };
}

/** What empty tins of this run weighed as a rule, where nobody has said what the tin weighs; 0: too few of them. */
const ownTinGrams = ({ weights }: RunRecords): ExactInput =>
  middleTare(
    weights.filter((row) => row.way === 'own' && isTin(row)).map((row) => gramsFromMicrograms(row.tare_ug)),
  ) ?? 0;

/** Tins cannot hold more than the bowl did, the errors of the weighings aside: then a weight, a tare or the yield is wrong. */
async function refuseEmptyBowl(tx: Writer, records: RunRecords, weight: Weight): Promise<void> {
  const { bowl, elsewhereUg, weights, head } = records;
  if (!bowl) return;
  const netUg = weight.gross_ug - weight.tare_ug;
  const before = weights.find((row) => row.entry_id === weight.refill_of);
  const heldUg = bowl.on_hand - elsewhereUg;
  const filledUg = takenUgOf(weights) - (before ? before.gross_ug - before.tare_ug : 0);
  const slackUg = await findBowlSlackUg(tx, bowl, {
    scaleErrorUg: head.scale_error_ug,
    weighings: standing(records).length + (before ? 0 : 1),
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
