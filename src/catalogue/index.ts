export { type Calculation, type CalculationSource, defineCalculation } from './define-calculation.ts';
export { describeFields, type FieldDescription } from './describe-fields.ts';
export { DURABILITY_THRESHOLD_MONTHS, ingredientOrder } from './label-tables.ts';
export { netContentsTables } from './net-contents-tables.ts';
export { calculations, findCalculation } from './registry.ts';
export { runCalculation } from './run-calculation.ts';
export { boundSafetyTables } from './safety-tables.ts';
export { scaleTables } from './scale-tables.ts';
export { writeReferencePage } from './write-reference-page.ts';
