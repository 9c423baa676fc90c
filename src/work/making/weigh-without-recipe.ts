import type { making } from '../../contract/index.ts';
import { problem } from '../../core/problem.ts';
import { exact, gramsFromMicrograms, microgramsFromGrams } from '../../core/quantity/index.ts';
import { askAboutReading } from '../../core/weighing/index.ts';
import {
  giveUp,
  insertAddition,
  insertBatchLine,
  insertMovements,
  insertRevisionLine,
  type LotAtHand,
  listAdditions,
  listBatchLines,
  listBatchSteps,
  listLotsAtHand,
  listScales,
  orGiveUp,
  type WithoutRecipeRow,
  type Writer,
} from '../../storage/index.ts';
import { sayProblem } from '../../words/index.ts';
import { whyHeld } from '../held-scale.ts';
import { inside } from '../inside.ts';
import { localDate, workshopZone } from '../local-date.ts';
import { lotTooSmall, spreadOverPlaces, whyNotUsable } from '../lot-use.ts';
import { newMovement } from '../new-movement.ts';
import { gramsText } from '../quantity-text.ts';
import { record, thingNotFound } from '../record.ts';
import { findWorstError } from '../scale-error.ts';
import { findStoppedBehind, whyStoppedBehind } from '../stopped-behind.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';
import { beginWithoutRecipe, findStageNow, openWithoutRecipe } from './begin-without-recipe.ts';
import { refuseWrongNet } from './refuse-doubtful.ts';
import { errorToKeepUg } from './weighing-error.ts';
import type { WeighingNote } from './weighing-note.ts';

type Body = RequestOf<'weighWithoutRecipe'>['body'];

/**
 * One weighing of what a maker has in the hands: lot, line, addition and movement in one entry, and the formula grows by
 * the line. What was weighed is its own target: nothing can lie outside of a band. The first one begins a trial batch.
 */
export const weighWithoutRecipe: UseCase<'weighWithoutRecipe'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const actual = orGiveUp(microgramsFromGrams(body.actualGrams, 'actualGrams'));
      const on = localDate(body.stamp.at, await workshopZone(inside(context, tx)));
      const lot = await lotToWeigh(tx, body.lotId, on);
      await refuseHeldScale(tx, body);
      const begun =
        body.batchId === null
          ? await beginWithoutRecipe(context, tx, { body, on })
          : await openWithoutRecipe(tx, body.batchId, body.stamp);
      const reading = await refuseDoubtful(tx, begun.batchId, body);
      if (actual > lot.on_hand) giveUp(lotTooSmall(lot, actual));
      const position = begun.isNew ? 0 : (await listBatchLines(tx, begun.batchId)).length;
      const stage = begun.isNew ? findStageNow([], []) : await readStage(tx, begun.batchId);
      const takings = spreadOverPlaces(lot, actual);
      await tell({
        kind: 'weighed-without-recipe',
        subjectKind: 'batch',
        subjectId: begun.batchId,
        payload: {
          begun: begun.isNew ? begun.story : undefined,
          position,
          stage,
          lotId: lot.id,
          lotNumber: lot.number,
          scaleId: body.scaleId,
          actualGrams: gramsText(actual),
          takenFrom: takings.map(({ place_id, quantity }) => ({
            placeId: place_id,
            grams: gramsText(quantity),
          })),
          ...(reading && { reading }),
        },
      });
      await begun.write();
      const line = { position, stage, lot, actual };
      await writeLine(tx, begun.row, line, await noteOf(tx, body.scaleId, actual), body);
      await insertAddition(tx, {
        entry_id: body.stamp.id,
        batch_id: begun.batchId,
        position,
        lot_id: lot.id,
        scale_id: body.scaleId,
        target_ug: actual,
        actual_ug: actual,
        is_part: null,
        reading: reading && JSON.stringify(reading),
        error_ug: errorToKeepUg(body.scaleId, actual, await listScales(tx)),
        scale_failed: null,
      });
      await insertMovements(
        tx,
        takings.map(({ place_id, quantity }) =>
          newMovement(context, body.stamp.id, {
            lot_id: lot.id,
            place_id,
            kind: 'used',
            quantity: -quantity,
            batch_id: begun.batchId,
          }),
        ),
      );
      return begun.batchId;
    },
    (id) => viewBatch(context, id),
  );

async function lotToWeigh(tx: Writer, lotId: string, on: string): Promise<LotAtHand> {
  const [lot] = await listLotsAtHand(tx, { lotIds: [lotId] });
  if (!lot) giveUp(thingNotFound('lotId', lotId));
  if (lot.unit !== 'g' || lot.item_kind === 'product')
    giveUp(problem('lot-of-another-item', lot.number, { found: lot.item_name }));
  const hindrance = whyNotUsable(lot, on, 'trial') ?? whyStoppedBehind(lot, await findStoppedBehind(tx));
  if (hindrance) giveUp(hindrance);
  return lot;
}

/** Another scale lies at hand, or it has to pass first: nothing is told late here. */
async function refuseHeldScale(tx: Writer, { scaleId, stamp }: Body): Promise<void> {
  const held =
    scaleId && (await whyHeld(tx, scaleId, { at: stamp.at, where: 'scaleId', code: 'scale-must-pass' }));
  if (held) giveUp(held);
}

/** Nothing is expected, so only the scale's own range and step, and the last figure once more, can be asked about. */
async function refuseDoubtful(tx: Writer, batchId: string, body: Body): Promise<making.ReadingNote | null> {
  refuseWrongNet(body);
  const scale = (await listScales(tx)).find((row) => row.id === body.scaleId);
  const last = (await listAdditions(tx, batchId)).filter((row) => !row.is_struck).at(-1);
  const question = askAboutReading({
    grams: body.actualGrams,
    grossGrams: body.vessel?.grossGrams,
    readabilityGrams: scale?.readability_grams,
    capacityGrams: scale?.capacity_grams,
    lastGrams: last && gramsFromMicrograms(last.actual_ug),
  });
  if (question && !body.isReadingSure)
    giveUp(
      problem('reading-doubtful', 'actualGrams', {
        found: body.actualGrams,
        parameters: { kind: question.code, question: sayProblem(question).says },
      }),
    );
  const asked = question && { kind: question.code, wasGrams: null };
  return asked === null && body.vessel === null ? null : { asked, vessel: body.vessel };
}

async function readStage(tx: Writer, batchId: string): Promise<string> {
  return findStageNow(await listBatchLines(tx, batchId), await listBatchSteps(tx, batchId));
}

async function noteOf(tx: Writer, scaleId: string | null, actual: number): Promise<WeighingNote> {
  const scale = (await listScales(tx)).find((row) => row.id === scaleId);
  const grams = gramsFromMicrograms(actual);
  const error = scale && findWorstError(scale, grams);
  return {
    percent: '',
    tolerancePercent: '2',
    relativeError: error?.ok ? exact(error.value).div(grams).toNumber() : null,
    smallestWeightGrams: null,
    warning: null,
    lotNote: null,
  };
}

interface NewLine {
  readonly position: number;
  readonly stage: string;
  readonly lot: LotAtHand;
  readonly actual: number;
}

async function writeLine(
  tx: Writer,
  row: WithoutRecipeRow,
  { position, stage, lot, actual }: NewLine,
  note: WeighingNote,
  body: Body,
): Promise<void> {
  const item = { stage, item_kind: lot.item_kind, item_id: lot.item_id };
  if (row.is_first === 1)
    await insertRevisionLine(tx, {
      revision_id: row.revision_id,
      position,
      ...item,
      grams: gramsText(actual),
    });
  await insertBatchLine(tx, {
    batch_id: row.batch_id,
    position,
    ...item,
    lot_id: lot.id,
    exact_grams: gramsText(actual),
    target_ug: actual,
    low_ug: actual,
    high_ug: actual,
    scale_id: body.scaleId,
    weighing: JSON.stringify(note),
  });
}
