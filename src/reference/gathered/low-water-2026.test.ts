import { expect, it } from 'vitest';
import { expectSoundTable } from '../../../test/tables/expect-sound-table.ts';
import {
  antioxidantLevels,
  growthLimits,
  lowRiskCriteria,
  lowWaterProductClasses,
  lowWaterRules,
  lowWaterSources,
  microLimits,
  peroxideConversions,
  peroxideLevels,
  solutionActivities,
  starchLevels,
} from './low-water-2026.ts';

it('has 69 rows: 9 criteria, 2 rules, 19 growth limits, 7 solutions, 11 products, 3 counts, 10 levels, 8 on peroxides', () => {
  const tables = [
    lowRiskCriteria,
    lowWaterRules,
    growthLimits,
    solutionActivities,
    lowWaterProductClasses,
    microLimits,
    antioxidantLevels,
    starchLevels,
    peroxideLevels,
    peroxideConversions,
  ];
  expect(tables.map((table) => table.length)).toEqual([9, 2, 19, 7, 11, 3, 6, 4, 7, 1]);
  expectSoundTable(tables.flat(), lowWaterSources);
});

it('names a criterion that exists for each product that is low-risk', () => {
  const ids = new Set(lowRiskCriteria.map(({ id }) => id));
  for (const { criterionId, lowRisk } of lowWaterProductClasses) {
    if (criterionId !== undefined) expect(ids).toContain(criterionId);
    if (lowRisk === 'yes') expect(criterionId).toBeDefined();
  }
});

it('keeps activities between nothing and pure water, and levels in order', () => {
  for (const { minWaterActivity } of growthLimits) expect(minWaterActivity).toBeGreaterThanOrEqual(0.6);
  for (const { waterActivityAt25Celsius: activity } of solutionActivities) {
    expect(activity > 0 && activity < 1).toBe(true);
  }
  for (const { minPercent = 0, typicalPercent = minPercent, maxPercent = 100 } of antioxidantLevels) {
    expect(minPercent <= typicalPercent && typicalPercent <= maxPercent).toBe(true);
  }
});

it('turns peroxide values as it says: twice the millimoles per litre over the density, within 0.1', () => {
  for (const { maxMmolPerLitre, densityGramsPerMl, maxMeqPerKg } of peroxideLevels) {
    if (maxMmolPerLitre === undefined || densityGramsPerMl === undefined || maxMeqPerKg === undefined) continue;
    expect(Math.abs((2 * maxMmolPerLitre) / densityGramsPerMl - maxMeqPerKg)).toBeLessThan(0.1);
  }
});
