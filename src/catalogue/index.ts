export { type Calculation, type CalculationSource, defineCalculation } from './define-calculation.ts';
