import type { LowWaterTables } from '../core/safety/index.ts';
import { antioxidantLevels, lowRiskCriteria, solutionActivities, starchLevels } from '../reference/index.ts';
import { rowById } from './row-by-id.ts';

const { typicalPercent, maxPercent } = rowById(starchLevels, 'maranta-moisture');
if (typicalPercent === undefined || maxPercent === undefined) throw new Error('no moisture of starch');

/** The published rows bound for judging products with little or no water. */
export const lowWaterTables: LowWaterTables = {
  criteria: lowRiskCriteria,
  solutions: solutionActivities.filter(({ percent }) => percent === undefined),
  antioxidants: antioxidantLevels,
  starchMoisture: { typicalPercent, maxPercent },
};
