import type { ScaleTables } from '../core/weighing/index.ts';
import { accuracyClasses, initialErrors, inServiceErrorRules } from '../reference/index.ts';
import { rowById } from './row-by-id.ts';

function inServiceFactor(): number {
  const { factor } = rowById(inServiceErrorRules, 'in-service-factor');
  if (factor === undefined) throw new Error('the reference tables lack the factor of errors in service');
  return factor;
}

/** The published tables of scales, bound for core/weighing. */
export const scaleTables: ScaleTables = {
  accuracyClasses,
  initialErrors,
  inServiceFactor: inServiceFactor(),
};
