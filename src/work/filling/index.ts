import type { UseCases } from '../use-case.ts';
import { adviseAim } from './advise-aim.ts';
import { changeFillWay } from './change-fill-way.ts';
import { closeRun } from './close-run.ts';
import { getRun, listRuns } from './get-run.ts';
import { getRunCost } from './get-run-cost.ts';
import { prepareRun } from './prepare-run.ts';
import { recordFill } from './record-fill.ts';
import { releaseRun } from './release-run.ts';
import { startRun } from './start-run.ts';
import { strikeFill } from './strike-fill.ts';

export { type ComposedLabel, type LabelFor, labelForProduct } from './compose-label.ts';
export { getRunCost } from './get-run-cost.ts';
export { gatherRun } from './run-records.ts';

export const fillingUseCases = {
  listRuns,
  startRun,
  getRun,
  prepareRun,
  changeFillWay,
  recordFill,
  strikeFill,
  closeRun,
  releaseRun,
  getRunCost,
  adviseAim,
} satisfies UseCases<
  | 'listRuns'
  | 'startRun'
  | 'getRun'
  | 'prepareRun'
  | 'changeFillWay'
  | 'recordFill'
  | 'strikeFill'
  | 'closeRun'
  | 'releaseRun'
  | 'getRunCost'
  | 'adviseAim'
>;
