import { batchCostCalculation } from './batch-cost.ts';

export const costCalculations = [batchCostCalculation] as const;
