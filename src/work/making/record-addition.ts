import type { Market, making } from '../../contract/index.ts';
import type { PositionState } from '../../core/making/index.ts';
import { done, problem, type Result, refused } from '../../core/problem.ts';
import { microgramsFromGrams } from '../../core/quantity/index.ts';
import {
  type BatchHead,
  type BatchLineNow,
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
import type { AskedContext, Context } from '../context.ts';
import { inside } from '../inside.ts';
import { localDate, workshopZone } from '../local-date.ts';
import { lotTooSmall, spreadOverPlaces, type Taking, whyNotUsable } from '../lot-use.ts';
import { newMovement } from '../new-movement.ts';
import { gramsText } from '../quantity-text.ts';
import { record, thingNotFound } from '../record.ts';
import { findStoppedBehind, whyStoppedBehind } from '../stopped-behind.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { judgeBand, listEntries } from './batch-screens.ts';
import { findLaterDone } from './find-later-done.ts';
import { findPeroxideStop } from './find-peroxide-stop.ts';
import { findRemedy } from './find-remedy.ts';
import { findScreen } from './find-screen.ts';
import { openJudge } from './judge-weighed.ts';
import { findOlderBases } from './older-bases.ts';
import { openBatch } from './open-batch.ts';
import { weighState } from './weigh-state.ts';
import type { WeighedIn } from './weighed-lookup.ts';

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
      const batch = await openBatch(tx, params.id ?? '', body.stamp, context);
      const { line, state } = await openLine(tx, batch.id, body.position, context);
      const actual = orGiveUp(microgramsFromGrams(body.actualGrams, 'actualGrams'));
      refuseWholePart(line, state, actual, body);
      const day = await dayOf(inside(context, tx), body);
      const lot = await lotFor(tx, line, body.lotId, { day, purpose: batch.purpose });
      if (actual > lot.on_hand) giveUp(lotTooSmall(lot, actual));
      if (batch.purpose === 'sale') {
        await refusePeroxide(inside(context, tx), batch, { line, state, lot, actual, body });
        await refuseUnknownlyOver(inside(context, tx), batch, { line, state, lot, actual, body });
      }
      refuseUnexplained({ line, state, lot, actual, body });
      await refuseLate(tx, line, lot, body);
      const takings = spreadOverPlaces(lot, actual);
      await tell({
        kind: 'addition-recorded',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: storyOf({ line, state, lot, actual, body }, takings),
      });
      await writeAddition(tx, { line, state, lot, actual, body });
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

/** What was entered, with the verdict of the sum up to it. */
async function viewAddition(db: Reader, entryId: string): Promise<Result<making.WeighedIn>> {
  const row = await findAdditionOfEntry(db, entryId);
  const line = row && (await findBatchLine(db, row.batch_id, row.position));
  if (!row || !line) return refused(thingNotFound('stamp.id', entryId));
  const before = (await listAdditionsAt(db, row.batch_id, row.position)).filter(
    (each) => !each.is_struck && each.seq < row.seq,
  );
  const view = listEntries([...before, row], line).at(-1);
  return view ? done(view) : refused(thingNotFound('stamp.id', entryId));
}

const storyOf = ({ line, state, lot, body }: Weighing, takings: readonly Taking[]) => ({
  position: body.position,
  lotId: lot.id,
  lotNumber: lot.number,
  scaleId: body.scaleId,
  targetGrams: gramsText(askedUg(line, state)),
  actualGrams: gramsText(takings.reduce((sum, taking) => sum + taking.quantity, 0)),
  takenFrom: takings.map((taking) => ({ placeId: taking.place_id, grams: gramsText(taking.quantity) })),
  ...(body.isPart && { isPart: true }),
  deviation: body.deviation,
});

/** Two people may both have weighed the same in while one was away: whoever answers for it says that both is in. */
async function openLine(
  tx: Writer,
  batchId: string,
  position: number,
  { isAfterAll = false }: AskedContext,
): Promise<{ line: BatchLineNow; state: PositionState }> {
  const line = await findBatchLine(tx, batchId, position);
  if (!line) giveUp(thingNotFound('position', String(position)));
  const state = weighState(line, await listAdditionsAt(tx, batchId, position));
  if (state.isDone && !isAfterAll)
    giveUp(problem('addition-done-already', 'position', { found: gramsText(state.inUg) }));
  return { line, state };
}

/** What was left to weigh; where more than the target is in already, the ledger still wants a figure: the target. */
const askedUg = (line: BatchLineNow, { leftUg }: PositionState): number => leftUg || line.target_ug;

/** Who says that more is to come where enough is in by then would be asked for nothing more than nothing. */
function refuseWholePart(line: BatchLineNow, { inUg }: PositionState, actual: number, body: Body): void {
  if (!body.isPart || inUg + actual < line.low_ug) return;
  const found = gramsText(inUg + actual);
  giveUp(problem('part-is-all', 'actualGrams', { found, allowed: gramsText(line.low_ug) }));
}

/** The day on which it was weighed, at the bench: an entry may reach the file later. */
const dayOf = async (context: Context, body: Body): Promise<string> =>
  localDate(body.stamp.at, await workshopZone(context));

async function lotFor(
  tx: Writer,
  line: BatchLineNow,
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

interface Weighing {
  readonly line: BatchLineNow;
  readonly state: PositionState;
  readonly lot: LotAtHand;
  readonly actual: number;
  readonly body: Body;
}

/** Of a part that more comes to only too much can be wrong. */
function bandVerdict({ line, state, actual, body }: Weighing): ReturnType<typeof judgeBand> {
  const verdict = judgeBand(state.inUg + actual, line);
  return body.isPart && verdict === 'low' ? 'inside' : verdict;
}

const isAsPlanned = (weighing: Weighing): boolean =>
  bandVerdict(weighing) === 'inside' && weighing.lot.id === weighing.line.lot_id;

/** What lies outside its band or comes of another lot than planned has to be explained. */
function refuseUnexplained(weighing: Weighing): void {
  const { line, state, lot, actual, body } = weighing;
  if (body.deviation || isAsPlanned(weighing)) return;
  if (bandVerdict(weighing) !== 'inside') {
    giveUp(
      problem('weight-outside-band', 'actualGrams', {
        found: gramsText(actual),
        allowed: gramsText(askedUg(line, state)),
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

/** Weighed in when the work has gone on is not what the method says: it needs what was done differently and why. */
async function refuseLate(tx: Writer, line: BatchLineNow, lot: LotAtHand, body: Body): Promise<void> {
  if (body.deviation) return;
  const later = await findLaterDone(tx, line.batch_id, line.position);
  if (later !== undefined) {
    giveUp(problem('weighed-late', 'actualGrams', { found: later, parameters: { item: lot.item_name } }));
  }
}

/**
 * The check that the release makes, made before the entry counts: it can still be taken out now. Whoever was told and
 * says why may go on; the release stops it then. Told before it is asked what happened, so that it is asked once.
 */
async function refuseUnknownlyOver(within: Context, batch: BatchHead, weighing: Weighing): Promise<void> {
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
    leftUg: askedUg(line, state),
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

const proposedBy = ({ line, lot, actual, body }: Weighing): WeighedIn => ({
  position: line.position,
  lot_id: lot.id,
  actual_ug: actual,
  isPart: body.isPart,
});

/** Before it is asked whether the amounts are right: of such a lot none is. */
async function refusePeroxide(within: Context, batch: BatchHead, weighing: Weighing): Promise<void> {
  const stop = await findPeroxideStop(within, batch, weighing.lot, proposedBy(weighing));
  if (stop) giveUp(stop);
}

async function writeAddition(tx: Writer, { line, state, actual, body }: Weighing): Promise<void> {
  const entry = { entry_id: body.stamp.id, batch_id: line.batch_id };
  await insertAddition(tx, {
    ...entry,
    position: line.position,
    lot_id: body.lotId,
    scale_id: body.scaleId,
    target_ug: askedUg(line, state),
    actual_ug: actual,
    is_part: body.isPart ? 1 : null,
    reading: null,
  });
  if (body.deviation)
    await insertDeviation(tx, {
      ...entry,
      ...body.deviation,
      screen: await findScreen(tx, line.batch_id, 'addition', line.position),
    });
}
