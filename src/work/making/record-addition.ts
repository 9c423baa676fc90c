import type { Market } from '../../contract/index.ts';
import { done, problem, type Result, refused } from '../../core/problem.ts';
import { microgramsFromGrams } from '../../core/quantity/index.ts';
import {
  type BatchHead,
  type BatchLineRow,
  findAdditionOfEntry,
  findBatchLine,
  giveUp,
  insertAddition,
  insertDeviation,
  insertMovements,
  type LotAtHand,
  listAdditionsAt,
  listLotsAtHand,
  orGiveUp,
  type Reader,
  type Writer,
} from '../../storage/index.ts';
import { say } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { inside } from '../inside.ts';
import { localDate, workshopZone } from '../local-date.ts';
import { lotTooSmall, spreadOverPlaces, type Taking, whyNotUsable } from '../lot-use.ts';
import { newMovement } from '../new-movement.ts';
import { gramsText } from '../quantity-text.ts';
import { record, thingNotFound } from '../record.ts';
import { findStoppedBehind, whyStoppedBehind } from '../stopped-behind.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { doneAddition, judgeBand } from './batch-screens.ts';
import { findLaterDone } from './find-later-done.ts';
import { findPeroxideStop } from './find-peroxide-stop.ts';
import { findRemedy } from './find-remedy.ts';
import { findScreen } from './find-screen.ts';
import { openJudge } from './judge-weighed.ts';
import { findOlderBases } from './older-bases.ts';
import { openBatch } from './open-batch.ts';

type Body = RequestOf<'recordAddition'>['body'];

/**
 * One weighing: entry, addition and the lot's movement of the actual mass in one transaction. What lies outside the
 * band, comes of another lot than planned, or is weighed when the work has gone on, needs what was done differently
 * and why. What breaks limits, report or label as weighed is told before it counts.
 */
export const recordAddition: UseCase<'recordAddition'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await openBatch(tx, params.id ?? '', body.stamp);
      const line = await openLine(tx, batch.id, body.position);
      const actual = orGiveUp(microgramsFromGrams(body.actualGrams, 'actualGrams'));
      const day = await dayOf(inside(context, tx), body);
      const lot = await lotFor(tx, line, body.lotId, { day, purpose: batch.purpose });
      if (actual > lot.on_hand) giveUp(lotTooSmall(lot, actual));
      if (batch.purpose === 'sale') {
        await refusePeroxide(inside(context, tx), batch, { line, lot, actual, body });
        await refuseUnknownlyOver(inside(context, tx), batch, { line, lot, actual, body });
      }
      refuseUnexplained(line, lot, actual, body);
      await refuseLate(tx, line, lot, body);
      const takings = spreadOverPlaces(lot, actual);
      await tell({
        kind: 'addition-recorded',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: storyOf(body, line, lot, takings),
      });
      await writeAddition(tx, body, line, actual);
      await insertMovements(
        tx,
        takings.map(({ place_id, quantity }) =>
          newMovement(context, body.stamp.id, {
            lot_id: lot.id,
            place_id,
            kind: 'used',
            quantity: -quantity,
            batch_id: batch.id,
          }),
        ),
      );
      return batch.id;
    },
    () => viewAddition(context.storage.db, body.stamp.id),
  );

async function viewAddition(db: Reader, entryId: string): Promise<Result<ReturnType<typeof doneAddition>>> {
  const row = await findAdditionOfEntry(db, entryId);
  return row ? done(doneAddition(row, row)) : refused(thingNotFound('stamp.id', entryId));
}

const storyOf = (body: Body, line: BatchLineRow, lot: LotAtHand, takings: readonly Taking[]) => ({
  position: body.position,
  lotId: lot.id,
  lotNumber: lot.number,
  scaleId: body.scaleId,
  targetGrams: gramsText(line.target_ug),
  actualGrams: gramsText(takings.reduce((sum, taking) => sum + taking.quantity, 0)),
  takenFrom: takings.map((taking) => ({ placeId: taking.place_id, grams: gramsText(taking.quantity) })),
  deviation: body.deviation,
});

async function openLine(tx: Writer, batchId: string, position: number): Promise<BatchLineRow> {
  const line = await findBatchLine(tx, batchId, position);
  if (!line) giveUp(thingNotFound('position', String(position)));
  const before = await listAdditionsAt(tx, batchId, position);
  const standing = before.find((row) => !row.is_struck);
  if (standing) {
    giveUp(problem('addition-done-already', 'position', { found: gramsText(standing.actual_ug) }));
  }
  return line;
}

/** The day on which it was weighed, at the bench: an entry may reach the file later. */
const dayOf = async (context: Context, body: Body): Promise<string> =>
  localDate(body.stamp.at, await workshopZone(context));

async function lotFor(
  tx: Writer,
  line: BatchLineRow,
  lotId: string,
  use: { readonly day: string; readonly purpose: string },
): Promise<LotAtHand> {
  const [lot] = await listLotsAtHand(tx, { lotIds: [lotId] });
  if (!lot) giveUp(thingNotFound('lotId', lotId));
  if (lot.item_kind !== line.item_kind || lot.item_id !== line.item_id) {
    giveUp(problem('lot-of-another-item', lot.number, { found: lot.item_name }));
  }
  const hindrance =
    whyNotUsable(lot, use.day, use.purpose) ?? whyStoppedBehind(lot, await findStoppedBehind(tx));
  if (hindrance) giveUp(hindrance);
  if (use.purpose === 'sale' && (await findOlderBases(tx, [lot])).has(lot.id)) {
    giveUp(problem('lot-of-older-revision', lot.number, { parameters: { item: lot.item_name } }));
  }
  return lot;
}

const isAsPlanned = (line: BatchLineRow, lot: LotAtHand, actual: number): boolean =>
  judgeBand(actual, line) === 'inside' && lot.id === line.lot_id;

/** What lies outside its band or comes of another lot than planned has to be explained. */
function refuseUnexplained(line: BatchLineRow, lot: LotAtHand, actual: number, body: Body): void {
  if (body.deviation || isAsPlanned(line, lot, actual)) return;
  const verdict = judgeBand(actual, line);
  const parameters = { item: lot.item_name, low: gramsText(line.low_ug), high: gramsText(line.high_ug) };
  if (verdict !== 'inside') {
    giveUp(
      problem('weight-outside-band', 'actualGrams', {
        found: gramsText(actual),
        allowed: gramsText(line.target_ug),
        parameters,
      }),
    );
  }
  giveUp(problem('lot-not-planned', lot.number, { parameters: { item: lot.item_name } }));
}

/** Weighed in when the work has gone on is not what the method says: it needs what was done differently and why. */
async function refuseLate(tx: Writer, line: BatchLineRow, lot: LotAtHand, body: Body): Promise<void> {
  if (body.deviation) return;
  const later = await findLaterDone(tx, line.batch_id, line.position);
  if (later !== undefined) {
    giveUp(problem('weighed-late', 'actualGrams', { found: later, parameters: { item: lot.item_name } }));
  }
}

interface Weighing {
  readonly line: BatchLineRow;
  readonly lot: LotAtHand;
  readonly actual: number;
  readonly body: Body;
}

/**
 * The check that the release makes, made before the entry counts: it can still be taken out now. Whoever was told and
 * says why may go on; the release stops it then. Told before it is asked what happened, so that it is asked once.
 */
async function refuseUnknownlyOver(within: Context, batch: BatchHead, weighing: Weighing): Promise<void> {
  const { line, lot, actual, body } = weighing;
  const mayBePlanned = isAsPlanned(line, lot, actual);
  // Outside its band it is asked next what happened; inside, only here.
  if (body.isOverKnown && (body.deviation || !mayBePlanned)) return;
  const judge = openJudge(within, {
    batchId: batch.id,
    revisionId: batch.revision_id,
    markets: JSON.parse(batch.markets) as Market[],
  });
  const wrong = await judge({ position: line.position, lot_id: lot.id, actual_ug: actual });
  if (wrong === null) return;
  // In its band it may be over together with what is in already. Whoever was told of that is not told at each step.
  if (mayBePlanned && (await judge()) !== null) return;
  const refused = { line, lotId: lot.id, itemName: lot.item_name, actualUg: actual };
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
async function refusePeroxide(within: Context, batch: BatchHead, weighing: Weighing): Promise<void> {
  const { line, lot, actual } = weighing;
  const proposed = { position: line.position, lot_id: lot.id, actual_ug: actual };
  const stop = await findPeroxideStop(within, batch, lot, proposed);
  if (stop) giveUp(stop);
}

async function writeAddition(tx: Writer, body: Body, line: BatchLineRow, actual: number): Promise<void> {
  const entry = { entry_id: body.stamp.id, batch_id: line.batch_id };
  await insertAddition(tx, {
    ...entry,
    position: line.position,
    lot_id: body.lotId,
    scale_id: body.scaleId,
    target_ug: line.target_ug,
    actual_ug: actual,
  });
  if (body.deviation)
    await insertDeviation(tx, {
      ...entry,
      ...body.deviation,
      screen: await findScreen(tx, line.batch_id, 'addition', line.position),
    });
}
