import { additionErrorCalculation } from './addition-error.ts';
import { controlChartCalculation } from './control-chart.ts';
import { massInAirCalculation } from './mass-in-air.ts';
import { premixCalculation } from './premix.ts';
import { scaleErrorsCalculation } from './scale-errors.ts';
import { smallestWeightCalculation } from './smallest-weight.ts';

export const weighingCalculations = [
  smallestWeightCalculation,
  additionErrorCalculation,
  scaleErrorsCalculation,
  premixCalculation,
  controlChartCalculation,
  massInAirCalculation,
] as const;
