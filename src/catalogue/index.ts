export { type Calculation, type CalculationSource, defineCalculation } from './define-calculation.ts';
export { netContentsTables } from './net-contents-tables.ts';
export { calculations, findCalculation } from './registry.ts';
export { scaleTables } from './scale-tables.ts';
