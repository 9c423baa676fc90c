import type { making } from '../../contract/index.ts';
import type { PositionState } from '../../core/making/index.ts';
import { done, problem, type Result, refused } from '../../core/problem.ts';
import { microgramsFromGrams } from '../../core/quantity/index.ts';
import {
  type BatchLineNow,
  findBatchLine,
  giveUp,
  insertAddition,
  insertDeviation,
  insertMovements,
  listAdditions,
  listAdditionsAt,
  listLotsAtHand,
  listScales,
  orGiveUp,
  type Reader,
  type Writer,
} from '../../storage/index.ts';
import type { AskedContext, Context } from '../context.ts';
import { inside } from '../inside.ts';
import { localDate, workshopZone } from '../local-date.ts';
import { lotTooSmall, spreadOverPlaces, type Taking } from '../lot-use.ts';
import { newMovement } from '../new-movement.ts';
import { gramsText } from '../quantity-text.ts';
import { record, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { listEntries } from './batch-screens.ts';
import { findScreen } from './find-screen.ts';
import { lotToWeigh } from './lot-to-weigh.ts';
import { openBatch } from './open-batch.ts';
import {
  refuseHeldScale,
  refuseLate,
  refusePeroxide,
  refuseUnexplained,
  refuseUnknownlyOver,
} from './refuse-addition.ts';
import { refuseDoubtful } from './refuse-doubtful.ts';
import { weighState } from './weigh-state.ts';
import { type AdditionBody, askedUg, type Weighing } from './weighing-entry.ts';
import { errorToKeepUg } from './weighing-error.ts';

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
      const { line, state, standing } = await openLine(tx, batch.id, body.position, context);
      const actual = orGiveUp(microgramsFromGrams(body.actualGrams, 'actualGrams'));
      refuseWholePart(line, state, actual, body);
      const isScaleFailed = await refuseHeldScale(tx, body);
      const day = await dayOf(inside(context, tx), body);
      const { purpose } = batch;
      const lot = await lotToWeigh(tx, { line, body, day, purpose, isAfterAll: context.isAfterAll ?? false });
      const scales = await listScales(tx);
      const weighing = { line, state, standing, lot, actual, body, scales, isScaleFailed };
      const reading = await withRestLot(tx, weighing, refuseDoubtful(weighing));
      if (actual > lot.on_hand) giveUp(lotTooSmall(lot, actual));
      if (batch.purpose === 'sale') {
        await refusePeroxide(inside(context, tx), batch, weighing);
        await refuseUnknownlyOver(inside(context, tx), batch, weighing);
      }
      refuseUnexplained(weighing);
      await refuseLate(tx, weighing);
      const takings = spreadOverPlaces(lot, actual);
      await tell({
        kind: 'addition-recorded',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: storyOf(weighing, takings, reading),
      });
      await writeAddition(tx, weighing, reading);
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
    (batchId) =>
      viewAddition(context.storage.db, {
        batchId,
        position: body.position,
        entryId: body.stamp.id,
      }),
  );

/** What was entered, with the verdict of the sum up to it. */
async function viewAddition(
  db: Reader,
  { batchId, position, entryId }: { batchId: string; position: number; entryId: string },
): Promise<Result<making.WeighedIn>> {
  const line = await findBatchLine(db, batchId, position);
  const rows = await listAdditionsAt(db, batchId, position);
  const own = rows.find((row) => row.entry_id === entryId);
  if (!own || !line) return refused(thingNotFound('stamp.id', entryId));
  const upTo = rows.filter((row) => row === own || (!row.is_struck && row.seq < own.seq));
  const view = listEntries(upTo, line).at(-1);
  return view ? done(view) : refused(thingNotFound('stamp.id', entryId));
}

const storyOf = (
  { line, state, lot, body, isScaleFailed }: Weighing,
  takings: readonly Taking[],
  reading: making.ReadingNote | null,
) => ({
  position: body.position,
  lotId: lot.id,
  lotNumber: lot.number,
  scaleId: body.scaleId,
  targetGrams: gramsText(askedUg({ line, state })),
  actualGrams: gramsText(takings.reduce((sum, taking) => sum + taking.quantity, 0)),
  takenFrom: takings.map((taking) => ({ placeId: taking.place_id, grams: gramsText(taking.quantity) })),
  ...(body.isPart && { isPart: true }),
  ...(reading !== null && { reading }),
  ...(isScaleFailed && { isScaleFailed }),
  ...(lot.item_id !== line.item_id && { insteadOf: line.item_id }),
  deviation: body.deviation,
});

/** Two people may both have weighed the same in while one was away: whoever answers for it says that both is in. */
async function openLine(
  tx: Writer,
  batchId: string,
  position: number,
  { isAfterAll = false }: AskedContext,
): Promise<Pick<Weighing, 'line' | 'state' | 'standing'>> {
  const line = await findBatchLine(tx, batchId, position);
  if (!line) giveUp(thingNotFound('position', String(position)));
  const additions = await listAdditions(tx, batchId);
  const state = weighState(line, additions);
  if (state.isDone && !isAfterAll)
    giveUp(problem('addition-done-already', 'position', { found: gramsText(state.inUg) }));
  return { line, state, standing: additions.filter((row) => !row.is_struck) };
}

/** Who says that more is to come where enough is in by then would be asked for nothing more than nothing. */
function refuseWholePart(
  line: BatchLineNow,
  { inUg }: PositionState,
  actual: number,
  body: AdditionBody,
): void {
  if (!body.isPart || inUg + actual < line.low_ug) return;
  const found = gramsText(inUg + actual);
  giveUp(problem('part-is-all', 'actualGrams', { found, allowed: gramsText(line.low_ug) }));
}

/** Where the lot ran out, the one that comes next is kept: whoever weighs the rest, on whichever tablet, is told. */
async function withRestLot(
  tx: Writer,
  { line, body }: Weighing,
  note: making.ReadingNote | null,
): Promise<making.ReadingNote | null> {
  if (!body.isPart || body.restLotId === null) return note;
  const [lot] = await listLotsAtHand(tx, { lotIds: [body.restLotId] });
  if (!lot) giveUp(thingNotFound('restLotId', body.restLotId));
  if (lot.item_id !== line.item_id)
    giveUp(problem('lot-of-another-item', lot.number, { found: lot.item_name }));
  return { asked: null, vessel: null, ...note, restLot: { id: lot.id, number: lot.number } };
}

/** The day on which it was weighed, at the bench: an entry may reach the file later. */
const dayOf = async (context: Context, body: AdditionBody): Promise<string> =>
  localDate(body.stamp.at, await workshopZone(context));

async function writeAddition(
  tx: Writer,
  { line, state, actual, body, scales, isScaleFailed }: Weighing,
  reading: making.ReadingNote | null,
): Promise<void> {
  const entry = { entry_id: body.stamp.id, batch_id: line.batch_id };
  await insertAddition(tx, {
    ...entry,
    position: line.position,
    lot_id: body.lotId,
    scale_id: body.scaleId,
    target_ug: askedUg({ line, state }),
    actual_ug: actual,
    is_part: body.isPart ? 1 : null,
    reading: reading && JSON.stringify(reading),
    error_ug: errorToKeepUg(body.scaleId, actual, scales),
    scale_failed: isScaleFailed ? 1 : null,
  });
  if (body.deviation)
    await insertDeviation(tx, {
      ...entry,
      ...body.deviation,
      screen: await findScreen(tx, line.batch_id, 'addition', line.position),
    });
}
