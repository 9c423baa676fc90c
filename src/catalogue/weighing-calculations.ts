import { additionErrorCalculation } from './addition-error.ts';
import { scaleErrorsCalculation } from './scale-errors.ts';
import { smallestWeightCalculation } from './smallest-weight.ts';

export const weighingCalculations = [
  smallestWeightCalculation,
  additionErrorCalculation,
  scaleErrorsCalculation,
] as const;
