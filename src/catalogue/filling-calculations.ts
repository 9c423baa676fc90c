import { airOverrunCalculation } from './air-overrun.ts';
import { batchWeightTestCalculation } from './batch-weight-test.ts';
import { samplingPlanCalculation } from './sampling-plan.ts';
import { targetFillCalculation } from './target-fill.ts';
import { tolerableErrorCalculation } from './tolerable-error.ts';
import { unitsFromBatchCalculation } from './units-from-batch.ts';
import { whippedFillCalculation } from './whipped-fill.ts';

export const fillingCalculations = [
  tolerableErrorCalculation,
  samplingPlanCalculation,
  batchWeightTestCalculation,
  targetFillCalculation,
  airOverrunCalculation,
  whippedFillCalculation,
  unitsFromBatchCalculation,
] as const;
