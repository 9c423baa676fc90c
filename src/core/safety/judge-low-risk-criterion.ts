import { type ExactInput, exact } from '../quantity/index.ts';
import type { CriterionRow, JudgedCriterion, LowWaterFacts } from './low-water.ts';

/** What the facts say of the quantity that a criterion asks for. */
function toldOf(quantity: string, facts: LowWaterFacts): ExactInput | boolean | undefined {
  switch (quantity) {
    case 'anhydrous':
      return isAnhydrous(facts);
    case 'organicSolventBased':
      return facts.isOrganicSolventBased;
    case 'oxidising':
      return facts.isOxidising;
    case 'ph':
      return facts.ph;
    case 'ethanolPercent':
      return facts.ethanolPercent;
    case 'fillingTemperatureCelsius':
      return facts.fillingTemperatureCelsius;
    case 'waterActivity':
      return facts.waterActivity;
    case 'aluminiumChlorohydratePercent':
      return facts.aluminiumChlorohydratePercent;
    default:
      return undefined;
  }
}

/** No water phase, and none can enter in use (the second half as remembered). */
function isAnhydrous({ hasWaterPhase, canWaterComeIn }: LowWaterFacts): boolean | undefined {
  if (hasWaterPhase) return false;
  return canWaterComeIn === undefined || hasWaterPhase === undefined ? undefined : !canWaterComeIn;
}

/**
 * One criterion of ISO 29621:2017 as a test laboratory lists it: pH below 3 or above 10, ethanol above 20 %, filled above
 * 65 degrees Celsius, water activity below 0.75, no water at all ... The standard itself is remembered with "at most" and
 * "at least": the stricter reading decides, and a value exactly at the figure is told.
 */
export function judgeLowRiskCriterion(row: CriterionRow, facts: LowWaterFacts): JudgedCriterion {
  const told = toldOf(row.quantity, facts);
  if (told === undefined) return { ...row, verdict: 'not-told', isAtFigure: false };
  if (typeof told === 'boolean' || typeof row.value === 'boolean') {
    return { ...row, verdict: told === row.value ? 'met' : 'not-met', isAtFigure: false };
  }
  const side = exact(told).cmp(row.value);
  const isMet = row.operator === '<' ? side < 0 : side > 0;
  return { ...row, verdict: isMet ? 'met' : 'not-met', isAtFigure: side === 0 };
}
