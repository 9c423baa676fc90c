export { type Calculation, type CalculationSource, defineCalculation } from './define-calculation.ts';
export { calculations, findCalculation } from './registry.ts';
