import type { UseCases } from '../use-case.ts';
import { abandonBatch } from './abandon-batch.ts';
import { addStepPhoto } from './add-step-photo.ts';
import { beginStep } from './begin-step.ts';
import { closeAddition } from './close-addition.ts';
import { decideWorstCase } from './decide-worst-case.ts';
import { finishBatch } from './finish-batch.ts';
import { finishWithoutRecipe } from './finish-without-recipe.ts';
import { getBatch } from './get-batch.ts';
import { getBatchSheet } from './get-batch-sheet.ts';
import { getWandering } from './get-wandering.ts';
import { listBatches } from './list-batches.ts';
import { offerResize } from './offer-resize.ts';
import { planBatch } from './plan-batch.ts';
import { recordAddition } from './record-addition.ts';
import { recordDeviation } from './record-deviation.ts';
import { recordRound } from './record-round.ts';
import { recordSpill } from './record-spill.ts';
import { recordStep } from './record-step.ts';
import { resizeBatch } from './resize-batch.ts';
import { startBatch } from './start-batch.ts';
import { stepWithoutRecipe } from './step-without-recipe.ts';
import { strikeAddition } from './strike-addition.ts';
import { strikeStepPhoto } from './strike-step-photo.ts';
import { weighWithoutRecipe } from './weigh-without-recipe.ts';

export const makingUseCases = {
  planBatch,
  listBatches,
  startBatch,
  getBatch,
  recordAddition,
  closeAddition,
  getWandering,
  weighWithoutRecipe,
  stepWithoutRecipe,
  finishWithoutRecipe,
  recordSpill,
  offerResize,
  resizeBatch,
  strikeAddition,
  beginStep,
  recordRound,
  addStepPhoto,
  strikeStepPhoto,
  recordStep,
  recordDeviation,
  finishBatch,
  abandonBatch,
  decideWorstCase,
  getBatchSheet,
} satisfies UseCases<
  | 'planBatch'
  | 'listBatches'
  | 'startBatch'
  | 'getBatch'
  | 'recordAddition'
  | 'closeAddition'
  | 'getWandering'
  | 'weighWithoutRecipe'
  | 'stepWithoutRecipe'
  | 'finishWithoutRecipe'
  | 'recordSpill'
  | 'offerResize'
  | 'resizeBatch'
  | 'strikeAddition'
  | 'beginStep'
  | 'recordRound'
  | 'addStepPhoto'
  | 'strikeStepPhoto'
  | 'recordStep'
  | 'recordDeviation'
  | 'finishBatch'
  | 'abandonBatch'
  | 'decideWorstCase'
  | 'getBatchSheet'
>;
