import { bestBeforeCalculation } from './best-before.ts';
import { ingredientListCalculation } from './ingredient-list.ts';

export const labelCalculations = [ingredientListCalculation, bestBeforeCalculation] as const;
