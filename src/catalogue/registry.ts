import { costCalculations } from './cost-calculations.ts';
import type { Calculation } from './define-calculation.ts';
import { fillingCalculations } from './filling-calculations.ts';
import { labelCalculations } from './label-calculations.ts';
import { safetyCalculations } from './safety-calculations.ts';
import { stockCalculations } from './stock-calculations.ts';
import { weighingCalculations } from './weighing-calculations.ts';

/** Every calculation once, room by room: command line, HTTP, docs and "show the working" all read this list. */
export const calculations: readonly Calculation[] = [
  ...weighingCalculations,
  ...fillingCalculations,
  ...safetyCalculations,
  ...labelCalculations,
  ...stockCalculations,
  ...costCalculations,
];

const byName = new Map(calculations.map((calculation) => [calculation.name, calculation]));

export const findCalculation = (name: string): Calculation | undefined => byName.get(name);
